/** A large block is told beside the page: the newest comes next, and what fails there is said and begun anew. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { type Block, findings } from '../../../geometry/index.ts'
import { received, type Sent, sent } from '../../../web/workers/sentDifference.ts'
import { type Outcome, teller } from '../../../web/workers/findingsClient.ts'
import { blockOf, square } from '../../help.ts'

const named = (name: string): Block => ({ ...blockOf(1, 1, [square('u', [0, 0], [1, 1], 'a')]), name })

/** Answers when it is told to. */
class Beside {
  static all: Beside[] = []
  onmessage: ((event: { data: unknown }) => void) | null = null
  onerror: ((event: { preventDefault: () => void }) => void) | null = null
  ended = false
  private block: object = {}
  private told: object = {}
  asked: string[] = []

  constructor() {
    Beside.all.push(this)
  }
  postMessage(changes: Sent): void {
    this.block = received(this.block, changes)
    this.asked.push((this.block as Block).name)
  }
  terminate(): void {
    this.ended = true
  }
  answer(): void {
    const now = findings(this.block as Block)
    const changes = sent(this.told, now)
    this.told = now
    this.onmessage?.({ data: { changes } })
  }
}

const told: [string, Outcome][] = []
const said = (): string[] => told.map(([name, outcome]) => `${name}: ${'report' in outcome ? outcome.report.block.name : outcome.reason}`)

beforeEach(() => {
  Beside.all = []
  told.length = 0
  vi.stubGlobal('Worker', Beside)
})
afterEach(() => {
  vi.unstubAllGlobals()
})

describe('blocks told beside the page', () => {
  const tell = (...names: string[]): ((name: string) => void) => {
    const ask = teller((block, outcome) => told.push([block.name, outcome]))
    const next = (name: string): void => ask(named(name))
    names.forEach(next)
    return next
  }

  it('are told one at a time, the newest next and none that is past already', () => {
    tell('first', 'second', 'third')
    const [one] = Beside.all as [Beside]
    one.answer()
    one.answer()
    expect(one.asked).toEqual(['first', 'third'])
    expect(said()).toEqual(['first: first', 'third: third'])
  })

  it('say why they could not be worked out, and the next is told from nothing', () => {
    const next = tell('first')
    Beside.all[0]?.onmessage?.({ data: { trouble: 'too deep' } })
    expect(said()).toEqual(['first: too deep'])
    next('second')
    const [one, two] = Beside.all as [Beside, Beside]
    expect(one.ended).toBe(true)
    two.answer()
    expect(said()).toEqual(['first: too deep', 'second: second'])
  })

  it('go on with the newest where the work came to an end', () => {
    const next = tell('first', 'second')
    Beside.all[0]?.onerror?.({ preventDefault: () => undefined })
    expect(Beside.all[1]?.asked).toEqual(['second'])
    next('third')
    Beside.all[1]?.answer()
    Beside.all[1]?.answer()
    expect(said()).toEqual(['first: the work beside the page came to an end', 'second: second', 'third: third'])
  })
})
