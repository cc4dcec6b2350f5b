/** What a log holds, in words of the reader, and how somebody corrects what its columns were taken for. */
package headertank.app.log.view;
