import 'fake-indexeddb/auto'
import { deleteDB, openDB } from 'idb'
import { describe, expect, it, vi } from 'vitest'
import { type Block, type Edit, moveUnits, recolourPatch, removeUnits, setName, turnUnits } from '../../../geometry/index.ts'
import { eveningStar } from '../../../web/document/starters/eveningStar.ts'
import { lantern } from '../../../web/document/starters/lantern.ts'
import { applyEdit, type History, redoStep, undoStep, newHistory } from '../../../web/document/history.ts'
import {
  importBlocks,
  cards,
  changeVersions,
  Damaged,
  firstCursor,
  deleteBlock,
  isOvertaken,
  openBase,
  openLast,
  read,
  salvaged,
  type WriteCursor,
  takeLease,
  versionBlock,
  versionsOf,
  write,
} from '../../../web/keeping/database.ts'
import { ARCHIVE_DAYS, countDay, emptyArchive, setArchived } from '../../../web/keeping/archive.ts'
import type { Base } from '../../../web/keeping/schema.ts'
import { autosaver, type SaveEvent } from '../../../web/keeping/autosave.ts'
import { thinALittle, thinVersions } from '../../../web/keeping/thinVersions.ts'

const EDITS: readonly Edit[] = [
  recolourPatch('goose-top', 'leftWing', 'moss'),
  turnUnits(['goose-top']),
  moveUnits(['centre'], '1/3', 0.5),
  removeUnits(['corner-1']),
]
const edited = (edits: readonly Edit[], from: History = newHistory(eveningStar)): History => edits.reduce(applyEdit, from)

let count = 0
const newBase = (): Promise<Base> => openBase(`test ${count++}`)

async function inBase(check: (db: Base) => Promise<void>): Promise<void> {
  const db = await newBase()
  await check(db)
  db.close()
}

describe('a block in the database', () => {
  it('comes back with its whole history, wherever one stands in it', () =>
    inBase(async (db) => {
      let cursor = firstCursor()
      let kept: History | null = null
      const wander = [...EDITS.map((edit) => (history: History) => applyEdit(history, edit)), undoStep, undoStep, redoStep, undoStep, undoStep]
      let present = newHistory(eveningStar)
      for (const step of [(history: History) => history, ...wander, (history: History) => applyEdit(history, setName('Another way'))]) {
        present = step(present)
        cursor = await write(db, cursor, kept, present, 1)
        kept = present
        expect(await read(db, cursor.id)).toEqual(present)
      }
    }))

  it('is kept by its steps, the base only being laid anew where they no longer lead there', () =>
    inBase(async (db) => {
      const start = newHistory(eveningStar)
      const first = await write(db, firstCursor(), null, start, 1)
      const long = edited(Array.from({ length: 401 }, (_, turn) => (turn % 2 === 0 ? turnUnits(['goose-top']) : moveUnits(['centre'], 1, 0))))
      const near = { ...long, past: long.past.slice(0, 3), block: edited([...EDITS]).block }
      expect((await write(db, first, start, near, 1)).base).toBe(0)
      expect((await write(db, first, start, long, 1)).base).toBe(401)
      expect(await read(db, first.id)).toEqual(long)
    }))

  it('is refused whole to a page whose turn is over', () =>
    inBase(async (db) => {
      const start = newHistory(eveningStar)
      const stale = await write(db, firstCursor(), null, start, 1)
      const other = await takeLease(db, stale.id)
      const theirs = applyEdit(start, setName('Theirs'))
      await write(db, other?.cursor as WriteCursor, start, theirs, 2)
      const refused = await write(db, stale, start, applyEdit(start, setName('Mine')), 3).catch((error: unknown) => error)
      expect(isOvertaken(refused)).toBe(true)
      expect(await read(db, stale.id)).toEqual(theirs)
    }))

  it('is refused to a page whose block was taken away for good', () =>
    inBase(async (db) => {
      const start = newHistory(eveningStar)
      const cursor = await write(db, firstCursor(), null, start, 1)
      await deleteBlock(db, cursor.id)
      expect(isOvertaken(await write(db, cursor, start, edited(EDITS), 2).catch((error: unknown) => error))).toBe(true)
      expect(await cards(db)).toEqual([])
    }))

  it('comes back among the others when it is edited after it was put aside', () =>
    inBase(async (db) => {
      const start = newHistory(eveningStar)
      const cursor = await write(db, firstCursor(), null, start, 1)
      await setArchived(db, cursor.id, 5)
      expect((await cards(db))[0]?.aside).toBe(5)
      await write(db, cursor, start, edited(EDITS), 6)
      expect((await cards(db))[0]).toMatchObject({ aside: null, changed: 6, name: eveningStar.name, fabrics: expect.arrayContaining(['Moss']) })
    }))

  it('goes with its steps and versions, and takes nothing of another with it', () =>
    inBase(async (db) => {
      const one = await write(db, firstCursor(), null, edited(EDITS), 1)
      const two = await write(db, firstCursor(), null, newHistory(lantern), 1)
      await changeVersions(db, [{ id: 'v', of: one.id, made: 1, name: null, why: 'rest', block: eveningStar }], [])
      await changeVersions(db, [{ id: 'w', of: two.id, made: 1, name: null, why: 'rest', block: lantern }], [])
      await deleteBlock(db, one.id)
      expect(await db.count('edits')).toBe(0)
      expect((await cards(db)).map(({ id }) => id)).toEqual([two.id])
      expect((await versionsOf(db, two.id)).map(({ id }) => id)).toEqual(['w'])
      expect([await db.count('versions'), await db.count('versionBlocks')]).toEqual([1, 1])
      expect(await versionBlock(db, 'w')).toEqual(lantern)
    }))

  it('is brought in from a file with all others or not at all', () =>
    inBase(async (db) => {
      const filed = (id: string, block: Block) => ({ id, made: 1, changed: 2, block, versions: [{ made: 1, name: 'first', block }] })
      await importBlocks(db, [filed('a', eveningStar)])
      await expect(importBlocks(db, [filed('b', lantern), filed('a', lantern)])).rejects.toThrow()
      expect((await cards(db)).map(({ id }) => id)).toEqual(['a'])
      expect(await read(db, 'a')).toEqual(newHistory(eveningStar))
    }))

  it('is not brought in by halves where one of them cannot even be sent', () =>
    inBase(async (db) => {
      const whole = { id: 'a', made: 1, changed: 1, block: eveningStar, versions: [] }
      // What cannot be copied stands for whatever the database will not take.
      const unsent = { ...whole, id: 'b', block: { ...lantern, later: () => 1 } as unknown as Block }
      await expect(importBlocks(db, [whole, unsent, { ...whole, id: 'c' }])).rejects.toThrow()
      expect(await cards(db)).toEqual([])
      expect(await read(db, 'a')).toBeNull()
    }))

  it('keeps of a version what a version is, whatever else its file says of it', () =>
    inBase(async (db) => {
      const version = { made: 7, name: 'the quiet one', block: lantern, why: 'asked', of: 'elsewhere', deep: [[[]]] }
      await importBlocks(db, [{ id: 'a', made: 1, changed: 1, block: eveningStar, versions: [version] }])
      expect(await versionsOf(db, 'a')).toEqual([{ id: expect.any(String), of: 'a', made: 7, name: 'the quiet one', why: 'brought' }])
    }))
})

describe('a damaged block', () => {
  const kept = async (db: Base): Promise<string> => (await write(db, firstCursor(), null, newHistory(eveningStar), 1)).id
  const withSteps = async (db: Base): Promise<string> => {
    const first = await write(db, firstCursor(), null, newHistory(eveningStar), 1)
    await write(db, first, newHistory(eveningStar), edited(EDITS), 2)
    return first.id
  }

  it('is told from one that is not there, and what leads on from its base is had back', () =>
    inBase(async (db) => {
      const id = await withSteps(db)
      await db.put('edits', { name: 'x', redo: 'no step', undo: '' }, [id, 2])
      await expect(read(db, id)).rejects.toBeInstanceOf(Damaged)
      expect(await salvaged(db, id)).toEqual(edited(EDITS.slice(0, 2)).block)
    }))

  it('goes as far as a step that leads to no block', () =>
    inBase(async (db) => {
      const id = await withSteps(db)
      await db.put('edits', { name: 'x', redo: JSON.stringify([['replace', ['units'], [], [7]]]), undo: '[]' }, [id, 1])
      expect(await salvaged(db, id)).toEqual(edited(EDITS.slice(0, 1)).block)
    }))

  it.each([null, 7, { past: 0, block: { name: 7 } }, { past: 0, block: { ...eveningStar, units: [{ id: 'a', kind: 'no kind' }] } }])(
    'gives nothing where its base is no block: %#',
    (base) =>
      inBase(async (db) => {
        const id = await kept(db)
        await db.put('bases', base as never, id)
        expect(await salvaged(db, id)).toBeNull()
      }),
  )

  it('has a card to look at, whatever is left of it', () =>
    inBase(async (db) => {
      const id = await kept(db)
      await db.put('cards', { id, changed: 'yesterday' } as never)
      expect(await cards(db)).toMatchObject([{ id, name: '', fabrics: [], made: 0, changed: 0, aside: null }])
    }))
})

describe('a database that is taken away under the page', () => {
  const within = async (change: (name: string) => Promise<unknown>): Promise<string[]> => {
    const heard: string[] = []
    const name = `test ${count++}`
    await openBase(name, { closed: () => heard.push('closed'), lost: () => heard.push('lost') })
    await change(name)
    return heard
  }

  it('is lost where it was cleared, and given away where a newer page wants it', async () => {
    expect(await within((name) => deleteDB(name))).toEqual(['lost'])
    expect(await within(async (name) => (await openDB(name, 99)).close())).toEqual(['closed'])
  })
})

describe('a database of before', () => {
  /** As the first version of the app left it: one block after three edits and one undo, its steps as lists of changes. */
  async function ofThatDay(name: string): Promise<void> {
    const db = await openDB(name, 1, {
      upgrade(old) {
        old.createObjectStore('now')
        old.createObjectStore('steps')
      },
    })
    const steps = [
      {
        name: 'change a fabric',
        redo: [{ op: 'replace', path: ['units', 5, 'fabrics', 'leftWing'], value: 'moss' }],
        undo: [{ op: 'replace', path: ['units', 5, 'fabrics', 'leftWing'], value: 'brick' }],
      },
      {
        name: 'remove a unit',
        redo: [
          { op: 'replace', path: ['units', 7], value: eveningStar.units[8] },
          { op: 'replace', path: ['units', 'length'], value: 8 },
        ],
        undo: [
          { op: 'replace', path: ['units', 7], value: eveningStar.units[7] },
          { op: 'add', path: ['units', 8], value: eveningStar.units[8] },
        ],
      },
      {
        name: 'open a file',
        redo: [{ op: 'replace', path: [], value: lantern }],
        undo: [{ op: 'replace', path: [], value: withoutBottom() }],
      },
    ]
    await Promise.all(steps.map((step, place) => db.put('steps', step, place)))
    await db.put('now', { block: withoutBottom(), past: 2 }, 'present')
    db.close()
  }

  const recoloured = (): Block => edited([recolourPatch('goose-top', 'leftWing', 'moss')]).block
  const withoutBottom = (): Block => edited([recolourPatch('goose-top', 'leftWing', 'moss'), removeUnits(['goose-bottom'])]).block

  it('is brought over with nothing lost', async () => {
    await ofThatDay('before')
    const db = await openBase('before')
    const id = (await openLast(db)) as string
    const { history } = (await takeLease(db, id)) as { history: History }
    expect(history.block).toEqual(withoutBottom())
    expect(undoStep(history).block).toEqual(recoloured())
    expect(undoStep(undoStep(history)).block).toEqual(eveningStar)
    expect(redoStep(history).block).toEqual(lantern)
    expect([...history.past, ...history.future].map(({ name }) => name)).toEqual(['change a fabric', 'remove a unit', 'open a file'])
    expect([...db.objectStoreNames]).not.toContain('now')
    db.close()
  })

  it('that was empty gives none', async () => {
    const old = await openDB('before, empty', 1, {
      upgrade(db) {
        db.createObjectStore('now')
        db.createObjectStore('steps')
      },
    })
    old.close()
    const db = await openBase('before, empty')
    expect(await cards(db)).toEqual([])
    db.close()
  })
})

describe('the keeper', () => {
  const heard = (news: SaveEvent[]): string[] => news.map(({ type }) => type)

  it('keeps what is edited faster than it is written', () =>
    inBase(async (db) => {
      const news: SaveEvent[] = []
      const keeper = autosaver(
        () => db,
        (one) => news.push(one),
      )
      const cursor = firstCursor()
      keeper.take(cursor, null)
      let present = newHistory(eveningStar)
      for (const step of [
        ...EDITS.map((edit) => (history: History) => applyEdit(history, edit)),
        undoStep,
        undoStep,
        undoStep,
        (h: History) => applyEdit(h, setName('New')),
      ]) {
        present = step(present)
        keeper.keep(present)
      }
      expect(await keeper.settled()).toBe(true)
      expect(await read(db, cursor.id)).toEqual(present)
      expect(news.at(-1)).toEqual({ type: 'saved', id: cursor.id })
    }))

  it('tries again after a refusal, and then keeps all of it', () =>
    inBase(async (db) => {
      vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
      let full = true
      const news: SaveEvent[] = []
      const base = (): Base => {
        if (full) throw new DOMException('no room', 'QuotaExceededError')
        return db
      }
      const keeper = autosaver(base, (one) => news.push(one))
      const cursor = firstCursor()
      keeper.take(cursor, null)
      const one = edited(EDITS.slice(0, 2))
      keeper.keep(one)
      expect(await keeper.settled()).toBe(false)
      expect(heard(news)).toEqual(['saving', 'failed'])
      full = false
      vi.advanceTimersByTime(1000)
      expect(await keeper.settled()).toBe(true)
      expect(await read(db, cursor.id)).toEqual(one)
      vi.useRealTimers()
    }))

  it('leaves no hole where a write was refused and the next one was not', () =>
    inBase(async (db) => {
      let refusals = 1
      const keeper = autosaver(
        () => {
          if (refusals-- > 0) throw new DOMException('no room', 'QuotaExceededError')
          return db
        },
        () => {},
      )
      const cursor = firstCursor()
      keeper.take(cursor, null)
      keeper.keep(edited(EDITS.slice(0, 1)))
      const all = edited(EDITS)
      keeper.keep(all)
      expect(await keeper.settled()).toBe(true)
      expect(await read(db, cursor.id)).toEqual(all)
    }))

  it('hands back what another page overtook, once', () =>
    inBase(async (db) => {
      const news: SaveEvent[] = []
      const keeper = autosaver(
        () => db,
        (one) => news.push(one),
      )
      const start = newHistory(eveningStar)
      const cursor = await write(db, firstCursor(), null, start, 1)
      keeper.take(cursor, start)
      await takeLease(db, cursor.id)
      const [one, two] = [edited(EDITS.slice(0, 1)), edited(EDITS.slice(0, 2))]
      keeper.keep(one)
      keeper.keep(two)
      await keeper.settled()
      expect(news.filter(({ type }) => type === 'overtaken')).toEqual([{ type: 'overtaken', history: two }])
      expect(await read(db, cursor.id)).toEqual(start)
    }))
})

describe('versions, as time goes by', () => {
  const HOUR = 3_600_000
  const at = (made: number, name: string | null = null) => ({ id: String(made), made, name })
  const NOW = 1000 * 24 * HOUR

  it('all of the last hour stay, then one an hour, then one a day; named ones always', () => {
    const lastHour = [0, 10, 20, 30, 59].map((minutes) => at(NOW - minutes * 60_000))
    const older = [at(NOW - 2.1 * HOUR), at(NOW - 2.6 * HOUR), at(NOW - 30 * HOUR), at(NOW - 35 * HOUR), at(NOW - 36 * HOUR, 'the blue one')]
    expect(thinVersions([...older, ...lastHour], NOW)).toEqual([older[1], older[3]].map((one) => one?.id))
  })

  it('goes a little at a time, the oldest first, so that a clock that jumps ahead costs little', () => {
    const made = Array.from({ length: 20 }, (_, place) => ({ id: String(place), made: NOW - place * 600_000, name: null }))
    const ahead = NOW + 30 * 86_400_000
    expect(thinVersions(made, ahead).length).toBeGreaterThan(15)
    expect(thinALittle(made, ahead)).toEqual(thinVersions(made, ahead).slice(-2))
    expect(Number(thinALittle(made, ahead)[1])).toBeGreaterThan(10)
  })

  it('what stays once is not thinned out by the clock alone but for a coarser span', () => {
    const made = Array.from({ length: 200 }, (_, index) => at(NOW - index * HOUR * 0.4))
    const stays = made.filter(({ id }) => !thinVersions(made, NOW).includes(id))
    expect(thinVersions(stays, NOW)).toEqual([])
    expect(stays.length).toBeLessThan(3 + 24 + 5)
  })
})

describe('the archive', () => {
  const archived = async (db: Base): Promise<string> => {
    const { id } = await write(db, firstCursor(), null, newHistory(lantern), 1)
    await setArchived(db, id, 5)
    return id
  }
  const ids = async (db: Base): Promise<string[]> => (await cards(db)).map(({ id }) => id)

  it('counts the days on which the app is opened, each once', () =>
    inBase(async (db) => {
      const counted: number[] = []
      for (const day of ['Monday', 'Monday', 'Tuesday', 'Tuesday', 'Friday']) counted.push(await countDay(db, day))
      expect(counted).toEqual([1, 1, 2, 2, 3])
    }))

  it('loses nothing to a clock that jumps a year ahead, nor to one that goes back', () =>
    inBase(async (db) => {
      await countDay(db, 'Mon Mar 02 2026')
      const id = await archived(db)
      for (const day of ['Wed Mar 03 2027', 'Tue Mar 03 2026', 'Thu Jan 01 1970']) await emptyArchive(db, await countDay(db, day))
      expect(await ids(db)).toEqual([id])
    }))

  it('lets a block go after so many days of use, and not a day before', () =>
    inBase(async (db) => {
      await countDay(db, 'day 0')
      const id = await archived(db)
      for (let day = 1; day <= ARCHIVE_DAYS; day++) await emptyArchive(db, await countDay(db, `day ${day}`))
      expect(await ids(db)).toEqual([id])
      await emptyArchive(db, await countDay(db, 'one more'))
      expect(await ids(db)).toEqual([])
    }))

  it('counts from today for what was put there before days were counted', () =>
    inBase(async (db) => {
      const id = await archived(db)
      const { asideDay: _, ...older } = (await db.get('cards', id)) as NonNullable<Awaited<ReturnType<typeof db.get<'cards'>>>>
      await db.put('cards', older)
      for (let day = 0; day <= ARCHIVE_DAYS; day++) await emptyArchive(db, await countDay(db, `day ${day}`))
      expect(await ids(db)).toEqual([id])
      await emptyArchive(db, await countDay(db, 'one more'))
      expect(await ids(db)).toEqual([])
    }))

  it('gives a block back for as long as it likes', () =>
    inBase(async (db) => {
      const id = await archived(db)
      await setArchived(db, id, null)
      for (let day = 0; day < 100; day++) await emptyArchive(db, await countDay(db, `day ${day}`))
      expect(await ids(db)).toEqual([id])
    }))
})
