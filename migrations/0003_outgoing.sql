-- Messages to the studio's own system: where they go, and when each happened. And what the studio
-- still has to tell a customer, counted for the list.
CREATE TABLE hook (
  id INTEGER NOT NULL PRIMARY KEY CHECK (id = 1),
  url TEXT NOT NULL,
  secret TEXT NOT NULL,
  old_secret TEXT,
  old_until INTEGER,
  created_at INTEGER NOT NULL,
  off_at INTEGER
) STRICT;
ALTER TABLE outbox ADD COLUMN at INTEGER NOT NULL DEFAULT 0;
ALTER TABLE head ADD COLUMN to_tell INTEGER NOT NULL DEFAULT 0 CHECK (to_tell >= 0);
CREATE INDEX head_to_tell ON head (updated_at, docket) WHERE to_tell > 0;
