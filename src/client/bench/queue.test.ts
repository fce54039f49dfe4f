import { describe, expect, it } from 'vitest'
import { batchOf, flush, type LineStore, type Queued, type Sender } from './queue'

/** A small generator of numbers that is the same in every run (xorshift32, Marsaglia 2003). */
const drawn = (seed: number) => {
  let x = seed * 2_654_435_761 || 1
  return (below: number): number => {
    x ^= x << 13
    x ^= x >>> 17
    x ^= x << 5
    return (x >>> 0) % below
  }
}

const DOCKETS = ['d1', 'd2'] as const

/** Everything that waits for its turn; a killed page's turns never come. */
const turns = (next: (below: number) => number) => {
  let waiting: { page: number; go: () => void }[] = []
  return {
    turn: (page: number): Promise<void> =>
      new Promise((go) => {
        waiting.push({ page, go })
      }),
    kill: (page: number) => {
      waiting = waiting.filter((w) => w.page !== page)
    },
    /** Lets one go on and gives it time to come to its next turn. */
    step: async (): Promise<boolean> => {
      const one = waiting.splice(next(Math.max(1, waiting.length)), 1)[0]
      one?.go()
      for (let i = 0; i < 12; i += 1) await Promise.resolve()
      return one !== undefined
    },
  }
}

type Phone = { readonly device: string; n: number; readonly kept: Map<string, Queued> }

/** The studio's side: a line whose id is there is left as it is, the others are taken in one step. */
const openStudio = () => {
  const lines: Queued[] = []
  return {
    lines,
    take: (given: readonly Queued[]): readonly string[] => {
      for (const line of given) if (!lines.some((l) => l.id === line.id)) lines.push(line)
      return given.map((l) => l.id)
    },
  }
}

const storeOf = (phone: Phone, turn: () => Promise<void>, acknowledged: string[]): LineStore => {
  const change = (id: string, more: Partial<Queued>) => {
    const line = phone.kept.get(id)
    if (line) phone.kept.set(id, { ...line, ...more })
  }
  return {
    add: async (lines) => {
      await turn()
      for (const line of lines) {
        phone.n += 1
        phone.kept.set(line.id, { ...line, device: phone.device, n: phone.n })
      }
      await turn()
      acknowledged.push(...lines.map((l) => l.id))
    },
    waiting: async () => {
      await turn()
      return [...phone.kept.values()]
        .filter((l) => !l.sent && l.refused === undefined)
        .sort((a, b) => a.n - b.n)
    },
    arrived: async (ids) => {
      await turn()
      for (const id of ids) change(id, { sent: true })
    },
    refuse: async (id, refused) => {
      await turn()
      change(id, { refused })
    },
    pictured: async (id) => {
      await turn()
      change(id, {})
    },
  }
}

type Net = { cut: boolean }

/** A link on which a request, or only its answer, may get lost at any time. */
const senderOf = (
  studio: ReturnType<typeof openStudio>,
  net: Net,
  next: (below: number) => number,
  turn: () => Promise<void>,
): Sender => ({
  lines: async (_docket, lines) => {
    await turn()
    if (net.cut || next(5) === 0) return { kind: 'away' }
    const ids = studio.take(lines)
    await turn()
    return net.cut || next(5) === 0 ? { kind: 'away' } : { kind: 'taken', ids }
  },
  picture: async () => ({ kind: 'away' }),
})

/** Two phones, two pages each: lines are written, sent, cut off and killed in a drawn order. */
const act = async (seed: number, send: typeof flush = flush) => {
  const next = drawn(seed)
  const all = turns(next)
  const studio = openStudio()
  const net: Net = { cut: false }
  const phones: readonly Phone[] = ['a', 'b'].map((device) => ({ device, n: 0, kept: new Map() }))
  const acknowledged: string[] = []
  const begun = new Set<string>()
  let clock = 1_000_000
  for (let step = 0; step < 24; step += 1) {
    const page = next(4)
    const phone = phones[page >> 1] as Phone
    const turn = () => all.turn(page)
    const store = storeOf(phone, turn, acknowledged)
    const what = next(10)
    if (what < 3) {
      // The clock of the phone may have been put back or forward by anybody.
      clock += next(3) === 0 ? -500_000 : 60_000
      const lines = Array.from({ length: 1 + next(2) }, (_, i) => ({
        id: `s${step}-${i}`,
        docket: DOCKETS[next(2)] ?? 'd1',
        kind: 'noted',
        body: {},
        at: clock,
      }))
      for (const { id } of lines) begun.add(id)
      void store.add(lines)
    } else if (what < 6) void send(store, senderOf(studio, net, next, turn))
    else if (what === 6) net.cut = !net.cut
    else if (what === 7) all.kill(page)
    for (let i = next(6); i > 0; i -= 1) await all.step()
  }
  // The day ends with a signal: each phone is opened once more.
  net.cut = false
  while (await all.step()) {
    // what was under way comes to its end
  }
  const now = async () => {}
  for (const phone of phones)
    await flush(storeOf(phone, now, []), {
      lines: async (_d, lines) => ({ kind: 'taken', ids: studio.take(lines) }),
      picture: async () => ({ kind: 'away' }),
    })
  return { studio, phones, acknowledged, begun }
}

/** What is lost, doubled, made up or left behind when the day is over. */
const faultsOf = (day: Awaited<ReturnType<typeof act>>): readonly string[] => {
  const ids = day.studio.lines.map((l) => l.id)
  // Begun and not acknowledged: the page was killed in between; it may be there, but once.
  return [
    ...day.acknowledged.filter((id) => !ids.includes(id)).map((id) => `lost ${id}`),
    ...ids.filter((id, i) => ids.indexOf(id) !== i).map((id) => `doubled ${id}`),
    ...ids.filter((id) => !day.begun.has(id)).map((id) => `made up ${id}`),
    ...day.phones
      .flatMap((p) => [...p.kept.values()].filter((l) => !l.sent))
      .map((l) => `left ${l.id}`),
  ]
}

/** A sender as one writes it at first: what was sent is taken for received. */
const hopeful: typeof flush = async (store, send) => {
  const lines = await store.waiting()
  await store.arrived(lines.map((l) => l.id))
  for (const docket of DOCKETS)
    await send.lines(
      docket,
      lines.filter((l) => l.docket === docket),
    )
  return 'sent'
}

describe('flush', () => {
  it('is tried by days that find out a sender which hopes', async () => {
    const found: string[] = []
    for (let seed = 1; seed <= 100; seed += 1) found.push(...faultsOf(await act(seed, hopeful)))
    expect(found.filter((f) => f.startsWith('lost')).length).toBeGreaterThan(20)
  })

  it('loses and doubles nothing in 10 000 interleavings of two phones with two pages each', async () => {
    let acknowledged = 0
    let resent = 0
    for (let seed = 1; seed <= 10_000; seed += 1) {
      const day = await act(seed)
      const ids = day.studio.lines.map((l) => l.id)
      const wrong = faultsOf(day)
      if (wrong.length > 0) expect({ seed, wrong }).toEqual({ seed, wrong: [] })
      for (const device of ['a', 'b']) {
        const n = day.studio.lines.filter((l) => l.device === device).map((l) => l.n)
        if (new Set(n).size !== n.length) expect({ seed, device, n }).toBe('running numbers once')
      }
      acknowledged += day.acknowledged.length
      resent += ids.length
    }
    expect(acknowledged).toBeGreaterThan(20_000)
    expect(resent).toBeGreaterThan(acknowledged)
  }, 120_000)

  const line = (id: string, more: Partial<Queued> = {}): Queued => ({
    id,
    docket: 'd1',
    kind: 'noted',
    body: {},
    device: 'a',
    n: Number(id),
    at: 0,
    ...more,
  })
  const phoneWith = (...lines: readonly Queued[]) => {
    const phone: Phone = { device: 'a', n: 9, kept: new Map(lines.map((l) => [l.id, l])) }
    return { phone, store: storeOf(phone, async () => {}, []) }
  }
  const left = (phone: Phone) =>
    [...phone.kept.values()].map((l) => [l.id, l.sent ? 'sent' : (l.refused ?? 'waits')])
  const never: Sender['picture'] = async () => ({ kind: 'away' })

  it('puts a wrong line aside with its reason and sends the others', async () => {
    const { phone, store } = phoneWith(line('1'), line('2'), line('3'))
    const sent: string[][] = []
    const flushed = await flush(store, {
      picture: never,
      lines: async (_d, lines) => {
        sent.push(lines.map((l) => l.id))
        const at = lines.findIndex((l) => l.id === '2')
        return at < 0
          ? { kind: 'taken', ids: lines.map((l) => l.id) }
          : { kind: 'faults', faults: [{ at, message: 'No such panel.' }] }
      },
    })
    expect(flushed).toBe('sent')
    expect(sent).toEqual([
      ['1', '2', '3'],
      ['1', '3'],
    ])
    expect(left(phone)).toEqual([
      ['1', 'sent'],
      ['2', 'No such panel.'],
      ['3', 'sent'],
    ])
  })

  it.each(['too-large', 'faults'] as const)(
    'sends fewer at once where the studio names no line (%s), and ends',
    async (kind) => {
      const { phone, store } = phoneWith(line('1'), line('2'))
      await flush(store, {
        picture: never,
        lines: async (_d, lines) =>
          lines.some((l) => l.id === '1')
            ? kind === 'too-large'
              ? { kind }
              : { kind, faults: [{ at: null, message: 'Taken.' }] }
            : { kind: 'taken', ids: lines.map((l) => l.id) },
      })
      expect(left(phone)).toEqual([
        ['1', kind === 'faults' ? 'Taken.' : 'too-large'],
        ['2', 'sent'],
      ])
    },
  )

  it('stops at a signed-out studio, and at an answer that is not its own', async () => {
    const { phone, store } = phoneWith(line('1'))
    const lines = (answer: Awaited<ReturnType<Sender['lines']>>) =>
      flush(store, { picture: never, lines: async () => answer })
    expect(await lines({ kind: 'signed-out' })).toBe('signed-out')
    expect(await lines({ kind: 'taken', ids: ['another'] })).toBe('away')
    expect(left(phone)).toEqual([['1', 'waits']])
  })

  it('sends a picture first, and its line only once the picture has a name', async () => {
    const { phone, store } = phoneWith(line('1', { picture: new Blob(['x']) }), line('2'))
    const named: LineStore = {
      ...store,
      pictured: async (id, photo) => {
        const { picture: _, ...rest } = phone.kept.get(id) as Queued
        phone.kept.set(id, { ...rest, body: { photo } })
      },
    }
    const sent: (readonly Queued[])[] = []
    const lines: Sender['lines'] = async (_d, given) => {
      sent.push(given)
      return { kind: 'taken', ids: given.map((l) => l.id) }
    }
    expect(await flush(named, { lines, picture: never })).toBe('away')
    // A large picture on a weak link keeps no reading waiting.
    expect(sent.flat().map((l) => l.id)).toEqual(['2'])
    const picture: Sender['picture'] = async () => ({ kind: 'kept', photo: 'p1' })
    expect(await flush(named, { lines, picture })).toBe('sent')
    expect(sent.flat().map((l) => [l.id, l.body])).toEqual([
      ['2', {}],
      ['1', { photo: 'p1' }],
    ])
  })

  it('never sends more at once than the studio takes', () => {
    const text = 'x'.repeat(4000)
    const many = Array.from({ length: 80 }, (_, i) => line(String(i), { body: { text } }))
    const batch = batchOf(many)
    expect(batch.length).toBeGreaterThan(1)
    expect(JSON.stringify(batch).length).toBeLessThan(262_144)
    expect(batchOf(many.map((l) => ({ ...l, body: {} })))).toHaveLength(50)
    expect(batchOf([line('1', { body: { text: 'x'.repeat(100_000) } })])).toHaveLength(1)
    expect(batchOf([line('1'), line('2', { docket: 'd2' })])).toHaveLength(1)
  })
})
