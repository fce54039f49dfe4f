-- The docket: an append-only list of lines, what stands beside it, and what serves the requests.
-- Times are integer milliseconds since 1970 UTC, dates are YYYY-MM-DD, money is integer minor units.
-- No foreign key cascades: a later rebuild of a table could then wipe its children.

CREATE TABLE head (
  docket TEXT NOT NULL PRIMARY KEY,
  rev INTEGER NOT NULL CHECK (rev >= 0),
  state TEXT NOT NULL,
  turn TEXT NOT NULL,
  sort_at INTEGER NOT NULL,
  reference TEXT UNIQUE,
  title TEXT NOT NULL,
  person TEXT,
  received_at INTEGER,
  wanted_by TEXT,
  job_date TEXT,
  ready_date TEXT,
  riskiest TEXT,
  price_low INTEGER,
  price_likely INTEGER,
  price_high INTEGER,
  currency TEXT,
  doubtful INTEGER NOT NULL DEFAULT 0 CHECK (doubtful IN (0, 1)),
  created_at INTEGER NOT NULL,
  updated_at INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX head_by_turn ON head (turn, sort_at, docket);
CREATE INDEX head_by_time ON head (sort_at, docket);
CREATE INDEX head_by_person ON head (person);

CREATE TABLE erasing (
  docket TEXT NOT NULL PRIMARY KEY
) STRICT, WITHOUT ROWID;

CREATE TABLE line (
  docket TEXT NOT NULL REFERENCES head (docket),
  seq INTEGER NOT NULL CHECK (seq >= 1),
  id TEXT NOT NULL UNIQUE,
  v INTEGER NOT NULL,
  kind TEXT NOT NULL,
  body TEXT NOT NULL CHECK (json_valid(body)),
  by TEXT NOT NULL,
  device TEXT,
  n INTEGER,
  at INTEGER NOT NULL,
  PRIMARY KEY (docket, seq)
) STRICT, WITHOUT ROWID;

-- INSERT OR REPLACE deletes without firing the DELETE trigger, so a taken key is refused on insert.
-- The words are those of the plain collision, which reaches the program as a conflict.
-- The id comes first: a line that was sent twice is known by it, even where its seq is taken too.
CREATE TRIGGER line_no_second BEFORE INSERT ON line
BEGIN
  SELECT RAISE(ABORT, 'UNIQUE constraint failed: line.id') WHERE EXISTS (
    SELECT 1 FROM line WHERE id = NEW.id AND docket NOT IN (SELECT docket FROM erasing)
  );
  SELECT RAISE(ABORT, 'UNIQUE constraint failed: line.docket, line.seq') WHERE EXISTS (
    SELECT 1 FROM line WHERE docket = NEW.docket AND seq = NEW.seq
      AND docket NOT IN (SELECT docket FROM erasing)
  );
END;
CREATE TRIGGER line_no_update BEFORE UPDATE ON line
WHEN OLD.docket NOT IN (SELECT docket FROM erasing)
  OR NEW.docket <> OLD.docket OR NEW.seq <> OLD.seq OR NEW.id <> OLD.id
BEGIN
  SELECT RAISE(ABORT, 'a line is never changed');
END;
CREATE TRIGGER line_no_delete BEFORE DELETE ON line
WHEN OLD.docket NOT IN (SELECT docket FROM erasing)
BEGIN
  SELECT RAISE(ABORT, 'a line is never deleted');
END;

CREATE TABLE person (
  id TEXT NOT NULL PRIMARY KEY,
  docket TEXT NOT NULL REFERENCES head (docket),
  name TEXT,
  email TEXT,
  phone TEXT,
  vin TEXT,
  plate TEXT,
  name_search TEXT,
  phone_search TEXT
) STRICT, WITHOUT ROWID;
CREATE INDEX person_by_docket ON person (docket);

CREATE TABLE free_text (
  id TEXT NOT NULL PRIMARY KEY,
  docket TEXT NOT NULL REFERENCES head (docket),
  field TEXT NOT NULL,
  text TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX free_text_by_docket ON free_text (docket);

CREATE TABLE photo (
  id TEXT NOT NULL PRIMARY KEY,
  docket TEXT NOT NULL REFERENCES head (docket),
  subject TEXT NOT NULL,
  mime TEXT NOT NULL,
  bytes INTEGER NOT NULL,
  width INTEGER,
  height INTEGER,
  key TEXT NOT NULL UNIQUE,
  at INTEGER NOT NULL,
  by TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX photo_by_docket ON photo (docket);

CREATE TABLE estimate (
  digest TEXT NOT NULL PRIMARY KEY,
  engine TEXT NOT NULL,
  script TEXT NOT NULL,
  settings_rev INTEGER NOT NULL,
  inputs TEXT NOT NULL CHECK (json_valid(inputs)),
  result TEXT NOT NULL CHECK (json_valid(result)),
  at INTEGER NOT NULL
) STRICT;
CREATE TRIGGER estimate_no_update BEFORE UPDATE ON estimate
BEGIN
  SELECT RAISE(ABORT, 'an estimate is never changed');
END;

CREATE TABLE settings (
  rev INTEGER NOT NULL PRIMARY KEY,
  body TEXT NOT NULL CHECK (json_valid(body)),
  by TEXT NOT NULL,
  at INTEGER NOT NULL
) STRICT;
CREATE TRIGGER settings_no_second BEFORE INSERT ON settings
WHEN EXISTS (SELECT 1 FROM settings WHERE rev = NEW.rev)
BEGIN
  SELECT RAISE(ABORT, 'UNIQUE constraint failed: settings.rev');
END;
CREATE TRIGGER settings_no_update BEFORE UPDATE ON settings
BEGIN
  SELECT RAISE(ABORT, 'a revision of the settings is never changed');
END;
CREATE TRIGGER settings_no_delete BEFORE DELETE ON settings
BEGIN
  SELECT RAISE(ABORT, 'a revision of the settings is never deleted');
END;

CREATE TABLE access (
  hash TEXT NOT NULL PRIMARY KEY,
  kind TEXT NOT NULL CHECK (kind IN ('customer', 'bench', 'owner', 'signin')),
  docket TEXT REFERENCES head (docket),
  label TEXT NOT NULL,
  created_at INTEGER NOT NULL,
  expires_at INTEGER,
  used_at INTEGER,
  revoked_at INTEGER,
  parent TEXT,
  CHECK ((kind = 'customer') = (docket IS NOT NULL))
) STRICT, WITHOUT ROWID;
CREATE INDEX access_by_docket ON access (docket);
-- A sign-in link makes one device: the second use collides and takes its whole batch with it.
CREATE UNIQUE INDEX access_link_used_once ON access (parent) WHERE kind IN ('bench', 'owner');

CREATE TABLE session (
  hash TEXT NOT NULL PRIMARY KEY,
  access TEXT NOT NULL REFERENCES access (hash),
  rights TEXT NOT NULL CHECK (rights IN ('owner', 'bench')),
  created_at INTEGER NOT NULL,
  seen_at INTEGER NOT NULL,
  expires_at INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX session_by_access ON session (access);

CREATE TABLE outbox (
  id TEXT NOT NULL PRIMARY KEY,
  kind TEXT NOT NULL,
  docket TEXT,
  payload TEXT NOT NULL CHECK (json_valid(payload)),
  dedupe TEXT NOT NULL UNIQUE,
  attempts INTEGER NOT NULL DEFAULT 0,
  next_at INTEGER NOT NULL,
  lease_until INTEGER,
  claim TEXT,
  status TEXT NOT NULL DEFAULT 'waiting' CHECK (status IN ('waiting', 'done', 'dead'))
) STRICT, WITHOUT ROWID;
CREATE INDEX outbox_waiting ON outbox (next_at) WHERE status = 'waiting';
CREATE INDEX outbox_by_docket ON outbox (docket);

CREATE TABLE idempotency (
  scope TEXT NOT NULL,
  key TEXT NOT NULL,
  fingerprint TEXT NOT NULL,
  status INTEGER,
  body TEXT,
  at INTEGER NOT NULL,
  expires_at INTEGER NOT NULL,
  PRIMARY KEY (scope, key)
) STRICT, WITHOUT ROWID;
CREATE INDEX idempotency_by_expiry ON idempotency (expires_at);

CREATE TABLE rate (
  bucket TEXT NOT NULL,
  "window" INTEGER NOT NULL,
  count INTEGER NOT NULL,
  PRIMARY KEY (bucket, "window")
) STRICT, WITHOUT ROWID;
CREATE INDEX rate_by_window ON rate ("window");
