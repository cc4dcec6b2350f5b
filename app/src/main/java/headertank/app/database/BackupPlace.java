package headertank.app.database;

import java.nio.file.Path;

/** Where backups of the built-in database lie; there is none where somebody else runs the database. */
public record BackupPlace(Path folder) {}
