/**
 * What was asked for and until when, where each job stands, and the page that each day begins with.
 *
 * <p>Why so many: the job, the queue and the start page show the same lines and count the same days; each form and each answer
 * of a query is a small record of its own.
 */
package headertank.app.job;
