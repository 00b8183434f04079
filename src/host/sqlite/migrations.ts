/**
 * Steps of the store's own layout, oldest first; `PRAGMA user_version` counts those already taken.
 * A step is never changed once published: a new one is added.
 */
export const migrations: readonly string[] = [
  `CREATE TABLE project (
     id TEXT PRIMARY KEY,
     name TEXT NOT NULL,
     created_at TEXT NOT NULL,
     saved_at TEXT NOT NULL,
     revision INTEGER NOT NULL,
     head INTEGER NOT NULL,
     deleted INTEGER NOT NULL DEFAULT 0
   ) STRICT;
   CREATE TABLE edit (
     project TEXT NOT NULL REFERENCES project (id),
     step INTEGER NOT NULL,
     label TEXT NOT NULL,
     at TEXT NOT NULL,
     document TEXT NOT NULL,
     UNIQUE (project, step)
   ) STRICT;`,
];
