// Generated from migrations/ by `npx tsx scripts/migrations-embed.ts`: do not edit.
import type { Migration } from './migrate'

export const migrations: readonly Migration[] = [
  {
    "n": 1,
    "name": "docket",
    "hash": "9bb0ea17a734a055e2684ac3336852179323aef5b652301741333593b866af01",
    "statements": [
      "CREATE TABLE head (\n  docket TEXT NOT NULL PRIMARY KEY,\n  rev INTEGER NOT NULL CHECK (rev >= 0),\n  state TEXT NOT NULL,\n  turn TEXT NOT NULL,\n  sort_at INTEGER NOT NULL,\n  reference TEXT UNIQUE,\n  title TEXT NOT NULL,\n  person TEXT,\n  received_at INTEGER,\n  wanted_by TEXT,\n  job_date TEXT,\n  ready_date TEXT,\n  riskiest TEXT,\n  price_low INTEGER,\n  price_likely INTEGER,\n  price_high INTEGER,\n  currency TEXT,\n  doubtful INTEGER NOT NULL DEFAULT 0 CHECK (doubtful IN (0, 1)),\n  created_at INTEGER NOT NULL,\n  updated_at INTEGER NOT NULL\n) STRICT, WITHOUT ROWID",
      "CREATE INDEX head_by_turn ON head (turn, sort_at, docket)",
      "CREATE INDEX head_by_time ON head (sort_at, docket)",
      "CREATE INDEX head_by_person ON head (person)",
      "CREATE TABLE erasing (\n  docket TEXT NOT NULL PRIMARY KEY\n) STRICT, WITHOUT ROWID",
      "CREATE TABLE line (\n  docket TEXT NOT NULL REFERENCES head (docket),\n  seq INTEGER NOT NULL CHECK (seq >= 1),\n  id TEXT NOT NULL UNIQUE,\n  v INTEGER NOT NULL,\n  kind TEXT NOT NULL,\n  body TEXT NOT NULL CHECK (json_valid(body)),\n  by TEXT NOT NULL,\n  device TEXT,\n  n INTEGER,\n  at INTEGER NOT NULL,\n  PRIMARY KEY (docket, seq)\n) STRICT, WITHOUT ROWID",
      "CREATE TRIGGER line_no_second BEFORE INSERT ON line\nBEGIN\n  SELECT RAISE(ABORT, 'UNIQUE constraint failed: line.id') WHERE EXISTS (\n    SELECT 1 FROM line WHERE id = NEW.id AND docket NOT IN (SELECT docket FROM erasing)\n  );\n  SELECT RAISE(ABORT, 'UNIQUE constraint failed: line.docket, line.seq') WHERE EXISTS (\n    SELECT 1 FROM line WHERE docket = NEW.docket AND seq = NEW.seq\n      AND docket NOT IN (SELECT docket FROM erasing)\n  );\nEND",
      "CREATE TRIGGER line_no_update BEFORE UPDATE ON line\nWHEN OLD.docket NOT IN (SELECT docket FROM erasing)\n  OR NEW.docket <> OLD.docket OR NEW.seq <> OLD.seq OR NEW.id <> OLD.id\nBEGIN\n  SELECT RAISE(ABORT, 'a line is never changed');\nEND",
      "CREATE TRIGGER line_no_delete BEFORE DELETE ON line\nWHEN OLD.docket NOT IN (SELECT docket FROM erasing)\nBEGIN\n  SELECT RAISE(ABORT, 'a line is never deleted');\nEND",
      "CREATE TABLE person (\n  id TEXT NOT NULL PRIMARY KEY,\n  docket TEXT NOT NULL REFERENCES head (docket),\n  name TEXT,\n  email TEXT,\n  phone TEXT,\n  vin TEXT,\n  plate TEXT,\n  name_search TEXT,\n  phone_search TEXT\n) STRICT, WITHOUT ROWID",
      "CREATE INDEX person_by_docket ON person (docket)",
      "CREATE TABLE free_text (\n  id TEXT NOT NULL PRIMARY KEY,\n  docket TEXT NOT NULL REFERENCES head (docket),\n  field TEXT NOT NULL,\n  text TEXT NOT NULL\n) STRICT, WITHOUT ROWID",
      "CREATE INDEX free_text_by_docket ON free_text (docket)",
      "CREATE TABLE photo (\n  id TEXT NOT NULL PRIMARY KEY,\n  docket TEXT NOT NULL REFERENCES head (docket),\n  subject TEXT NOT NULL,\n  mime TEXT NOT NULL,\n  bytes INTEGER NOT NULL,\n  width INTEGER,\n  height INTEGER,\n  key TEXT NOT NULL UNIQUE,\n  at INTEGER NOT NULL,\n  by TEXT NOT NULL\n) STRICT, WITHOUT ROWID",
      "CREATE INDEX photo_by_docket ON photo (docket)",
      "CREATE TABLE estimate (\n  digest TEXT NOT NULL PRIMARY KEY,\n  engine TEXT NOT NULL,\n  script TEXT NOT NULL,\n  settings_rev INTEGER NOT NULL,\n  inputs TEXT NOT NULL CHECK (json_valid(inputs)),\n  result TEXT NOT NULL CHECK (json_valid(result)),\n  at INTEGER NOT NULL\n) STRICT",
      "CREATE TRIGGER estimate_no_update BEFORE UPDATE ON estimate\nBEGIN\n  SELECT RAISE(ABORT, 'an estimate is never changed');\nEND",
      "CREATE TABLE settings (\n  rev INTEGER NOT NULL PRIMARY KEY,\n  body TEXT NOT NULL CHECK (json_valid(body)),\n  by TEXT NOT NULL,\n  at INTEGER NOT NULL\n) STRICT",
      "CREATE TRIGGER settings_no_second BEFORE INSERT ON settings\nWHEN EXISTS (SELECT 1 FROM settings WHERE rev = NEW.rev)\nBEGIN\n  SELECT RAISE(ABORT, 'UNIQUE constraint failed: settings.rev');\nEND",
      "CREATE TRIGGER settings_no_update BEFORE UPDATE ON settings\nBEGIN\n  SELECT RAISE(ABORT, 'a revision of the settings is never changed');\nEND",
      "CREATE TRIGGER settings_no_delete BEFORE DELETE ON settings\nBEGIN\n  SELECT RAISE(ABORT, 'a revision of the settings is never deleted');\nEND",
      "CREATE TABLE access (\n  hash TEXT NOT NULL PRIMARY KEY,\n  kind TEXT NOT NULL CHECK (kind IN ('customer', 'bench', 'owner', 'signin')),\n  docket TEXT REFERENCES head (docket),\n  label TEXT NOT NULL,\n  created_at INTEGER NOT NULL,\n  expires_at INTEGER,\n  used_at INTEGER,\n  revoked_at INTEGER,\n  parent TEXT,\n  CHECK ((kind = 'customer') = (docket IS NOT NULL))\n) STRICT, WITHOUT ROWID",
      "CREATE INDEX access_by_docket ON access (docket)",
      "CREATE UNIQUE INDEX access_link_used_once ON access (parent) WHERE kind IN ('bench', 'owner')",
      "CREATE TABLE session (\n  hash TEXT NOT NULL PRIMARY KEY,\n  access TEXT NOT NULL REFERENCES access (hash),\n  rights TEXT NOT NULL CHECK (rights IN ('owner', 'bench')),\n  created_at INTEGER NOT NULL,\n  seen_at INTEGER NOT NULL,\n  expires_at INTEGER NOT NULL\n) STRICT, WITHOUT ROWID",
      "CREATE INDEX session_by_access ON session (access)",
      "CREATE TABLE outbox (\n  id TEXT NOT NULL PRIMARY KEY,\n  kind TEXT NOT NULL,\n  docket TEXT,\n  payload TEXT NOT NULL CHECK (json_valid(payload)),\n  dedupe TEXT NOT NULL UNIQUE,\n  attempts INTEGER NOT NULL DEFAULT 0,\n  next_at INTEGER NOT NULL,\n  lease_until INTEGER,\n  claim TEXT,\n  status TEXT NOT NULL DEFAULT 'waiting' CHECK (status IN ('waiting', 'done', 'dead'))\n) STRICT, WITHOUT ROWID",
      "CREATE INDEX outbox_waiting ON outbox (next_at) WHERE status = 'waiting'",
      "CREATE INDEX outbox_by_docket ON outbox (docket)",
      "CREATE TABLE idempotency (\n  scope TEXT NOT NULL,\n  key TEXT NOT NULL,\n  fingerprint TEXT NOT NULL,\n  status INTEGER,\n  body TEXT,\n  at INTEGER NOT NULL,\n  expires_at INTEGER NOT NULL,\n  PRIMARY KEY (scope, key)\n) STRICT, WITHOUT ROWID",
      "CREATE INDEX idempotency_by_expiry ON idempotency (expires_at)",
      "CREATE TABLE rate (\n  bucket TEXT NOT NULL,\n  \"window\" INTEGER NOT NULL,\n  count INTEGER NOT NULL,\n  PRIMARY KEY (bucket, \"window\")\n) STRICT, WITHOUT ROWID",
      "CREATE INDEX rate_by_window ON rate (\"window\")"
    ]
  },
  {
    "n": 2,
    "name": "feed",
    "hash": "fe6301244aaafbb6fc9fa5b0779c4baafdd13149060933fddc197c8d6e58d270",
    "statements": [
      "CREATE TABLE feed (\n  id INTEGER NOT NULL PRIMARY KEY CHECK (id = 1),\n  hash TEXT NOT NULL UNIQUE,\n  created_at INTEGER NOT NULL\n) STRICT"
    ]
  },
  {
    "n": 3,
    "name": "outgoing",
    "hash": "6c02125185a607781986ff581f302badfc1f8b9499a89a782b391129eee05814",
    "statements": [
      "CREATE TABLE hook (\n  id INTEGER NOT NULL PRIMARY KEY CHECK (id = 1),\n  url TEXT NOT NULL,\n  secret TEXT NOT NULL,\n  old_secret TEXT,\n  old_until INTEGER,\n  created_at INTEGER NOT NULL,\n  off_at INTEGER\n) STRICT",
      "ALTER TABLE outbox ADD COLUMN at INTEGER NOT NULL DEFAULT 0",
      "ALTER TABLE head ADD COLUMN to_tell INTEGER NOT NULL DEFAULT 0 CHECK (to_tell >= 0)",
      "CREATE INDEX head_to_tell ON head (updated_at, docket) WHERE to_tell > 0"
    ]
  }
]
