/** The shop, its members' roles, and who is asking right now. */
package headertank.app.shop;
