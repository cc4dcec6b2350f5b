/** Customers and their cars, as the front desk knows them. */
package headertank.app.car;
