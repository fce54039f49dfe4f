import type { Migration } from '../../src/store/migrate'

const many = (n: number): readonly string[] => [
  `CREATE TABLE step_${n} (x INTEGER NOT NULL) STRICT`,
  `WITH RECURSIVE c(x) AS (SELECT 1 UNION ALL SELECT x + 1 FROM c WHERE x < 2000)
    INSERT INTO step_${n} SELECT x FROM c`,
  `CREATE INDEX step_${n}_x ON step_${n} (x)`,
]

/** Steps that take a while each, so that a kill meets one under way. */
export const longMigrations: readonly Migration[] = Array.from({ length: 400 }, (_, i) => ({
  n: i + 1,
  name: `step-${i + 1}`,
  hash: `h${i + 1}`,
  statements: many(i + 1),
}))
