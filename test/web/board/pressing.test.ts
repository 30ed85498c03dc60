/** What a press on an arrow, and a key, asks for in the view of the pressing arrows. Common practice, no source. */
import { describe, expect, it } from 'vitest'
import { type Block, findings, type Findings, type Join, type PressChoice, pressSeams } from '../../../geometry/index.ts'
import type { HandCommand, HandContext } from '../../../web/board/hand/values.ts'
import { drawnSeams, type DrawnSeam, type Point } from '../../../web/document/shapes.ts'
import { applyEdit, newHistory } from '../../../web/document/history.ts'
import { blockOf, square } from '../../help.ts'
import { contextOf, dragged, key, play, tapped } from './board.ts'

/** Three squares in a row above a wide one: two upright seams, one level. */
const block = blockOf(3, 2, [square('a', [0, 0]), square('b', [1, 0]), square('c', [2, 0]), square('w', [0, 1], [3, 1])])
const report = findings(block)
const board = (more: Partial<HandContext> = {}): HandContext => contextOf(block, { report, pressing: true, ...more })
const seams = drawnSeams(report)
const [left, right, level] = [...seams].sort((a, b) => a.middle[1] - b.middle[1] || a.middle[0] - b.middle[0]) as [DrawnSeam, DrawnSeam, DrawnSeam]
const beside = ({ middle: [x, y] }: DrawnSeam, dx: number, dy = 0): Point => [x + dx, y + dy]
const pressed = (commands: readonly HandCommand[]) => commands.filter(({ type }) => type === 'pressSeam')

function after(report: Findings, block: Block, join: string, choice: PressChoice): { block: Block; report: Findings } {
  const next = applyEdit(newHistory(block), pressSeams(report, new Map([[join, choice]]))).block
  return { block: next, report: findings(next) }
}
const joinOf = ({ joins }: Findings, id: string): Join => joins.find((join) => join.id === id) as Join

describe('a press on an arrow', () => {
  it('selects the seam and turns it', () => {
    const { id, press } = left.join
    expect(tapped(board(), left.middle)).toEqual([
      { type: 'selectSeam', join: id },
      { type: 'pressSeam', join: id, choice: press.toward === 0 ? 1 : 0 },
    ])
  })

  it('turns it, then presses it open, then leaves it as proposed', () => {
    const { id } = level.join
    const states: Join['press'][] = []
    let now = { block, report }
    for (let press = 0; press < 3; press++) {
      const [command] = pressed(tapped(contextOf(now.block, { report: now.report, pressing: true }), level.middle))
      if (command?.type !== 'pressSeam') throw new Error('the arrow was not pressed')
      now = after(now.report, now.block, command.join, command.choice)
      states.push(joinOf(now.report, id).press)
    }
    const first = level.join.press
    expect(states).toMatchObject([
      { toward: first.toward === 0 ? 1 : 0, rule: 'asked' },
      { toward: 'open', rule: 'asked' },
      { toward: first.toward, rule: first.rule },
    ])
    expect(now.block).toEqual(block)
  })

  it('reaches farther under a finger than under a mouse, and means the nearest arrow', () => {
    const touch = { pointerType: 'touch' } as const
    expect(pressed(tapped(board(), beside(left, 0.2)))).toHaveLength(0)
    expect(pressed(tapped(board(), beside(left, 0.2), touch))).toMatchObject([{ join: left.join.id }])
    expect(pressed(tapped(board(), beside(left, 0, 0.25), touch))).toHaveLength(0)
    const close = { frame: { ...board().frame, scale: 30, toPixels: (x: number, y: number): [number, number] => [x * 30, y * 30] } }
    expect(pressed(tapped(board(close), [(right.middle[0] * 30 - 10) / 100, (right.middle[1] * 30) / 100], touch))).toMatchObject([
      { join: right.join.id },
    ])
  })

  it('beside all arrows lets go of the seam, and selects no unit', () => {
    expect(tapped(board({ seam: left.join.id }), [0.3, 0.8])).toEqual([{ type: 'selectSeam', join: null }])
  })

  it('means nothing of the kind in other views, with findings that are not there, or while a fix is tried', () => {
    expect(pressed(tapped(board({ pressing: false }), left.middle))).toEqual([])
    expect(pressed(tapped(board({ report: null }), left.middle))).toEqual([])
    expect(pressed(tapped(board({ document: { ...block } }), left.middle))).toEqual([])
  })

  it('moves no unit when it is dragged: the board moves', () => {
    expect(dragged(board(), [0.5, 0.5], [[1.5, 0.5]])).toMatchObject({ type: 'pan' })
  })
})

describe('a key in the view of the arrows', () => {
  const typed = (name: string, more: Partial<HandContext> = {}): readonly HandCommand[] => play(board(more), [key(name)]).commands

  it('goes from seam to seam, the first one at the top left', () => {
    expect(typed('ArrowRight')).toEqual([{ type: 'selectSeam', join: left.join.id }])
    expect(typed('ArrowRight', { seam: left.join.id })).toEqual([{ type: 'selectSeam', join: right.join.id }])
    expect(typed('ArrowLeft', { seam: right.join.id })).toEqual([{ type: 'selectSeam', join: left.join.id }])
    expect(typed('ArrowLeft', { seam: left.join.id }), 'the last one that way').toEqual([{ type: 'selectSeam', join: left.join.id }])
    expect(typed('ArrowDown', { seam: left.join.id })).toEqual([{ type: 'selectSeam', join: level.join.id }])
  })

  it('presses the selected seam: Enter as a press does, T the other way, O open, Delete as proposed', () => {
    const join = level.join.id
    const other = level.join.press.toward === 0 ? 1 : 0
    expect(typed('Enter', { seam: join })).toEqual([{ type: 'pressSeam', join, choice: other }])
    expect(typed('t', { seam: join })).toEqual([{ type: 'pressSeam', join, choice: other }])
    expect(typed('o', { seam: join })).toEqual([{ type: 'pressSeam', join, choice: 'open' }])
    for (const name of ['Delete', 'Backspace']) expect(typed(name, { seam: join })).toEqual([{ type: 'pressSeam', join, choice: 'proposed' }])
  })

  it('with no seam selected selects the first one', () => {
    expect(typed('Enter')).toEqual([{ type: 'selectSeam', join: left.join.id }])
  })

  it('changes no unit: what turns, copies or deletes units elsewhere means nothing here', () => {
    for (const name of ['m', 'd', 'x', 'r', 'p', 'b', 'f', '2'])
      expect(play(board({ selected: ['a'] }), [key(name)])).toMatchObject({ commands: [], handled: false })
    expect(play(board(), [key('z', { control: true })]).commands).toEqual([{ type: 'key', command: { type: 'undo' } }])
  })
})
