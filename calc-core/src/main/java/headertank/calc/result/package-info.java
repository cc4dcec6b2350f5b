/** What a rating hands back: records of figures, without a model among them. */
package headertank.calc.result;
