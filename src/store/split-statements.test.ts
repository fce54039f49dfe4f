import { describe, expect, it } from 'vitest'
import { splitStatements } from './split-statements'

describe('splitStatements', () => {
  it.each([
    ['nothing', '', []],
    ['only comments', '-- a;\n/* b; */', []],
    ['a last statement without semicolon', 'select 1; select 2', ['select 1', 'select 2']],
    ['semicolons in texts', `select ';''; ' , ";"; select 2`, [`select ';''; ' , ";"`, 'select 2']],
    ['a semicolon in a comment', 'select 1 -- ;\n+ 2;', ['select 1 \n+ 2']],
    [
      'CASE outside a trigger',
      'select case when 1 then 2 end; select 3',
      ['select case when 1 then 2 end', 'select 3'],
    ],
    ['a transaction', 'begin; select 1; commit', ['begin', 'select 1', 'commit']],
  ])('cuts %s', (_, script, statements) => {
    expect(splitStatements(script)).toEqual(statements)
  })

  it('keeps a trigger with CASE in its body in one piece', () => {
    const trigger = `create temp trigger t before insert on a
begin select case when 1 then 'end;' else 2 end; select 2; end`
    expect(splitStatements(`select 1; ${trigger}; select 3;`)).toEqual([
      'select 1',
      trigger,
      'select 3',
    ])
  })
})
