/** An invented shop to look around in. Nothing in it is real, and it never mixes with a real one. */
package headertank.app.demo;
