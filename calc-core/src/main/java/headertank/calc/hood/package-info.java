/** Heat through the hood's panel: what its material can and cannot do. */
package headertank.calc.hood;
