-- The address a calendar reads the studio's days at: one, by the hash of its secret.
CREATE TABLE feed (
  id INTEGER NOT NULL PRIMARY KEY CHECK (id = 1),
  hash TEXT NOT NULL UNIQUE,
  created_at INTEGER NOT NULL
) STRICT;
