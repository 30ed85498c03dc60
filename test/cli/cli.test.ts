/** The command as a maker's program runs it: bundled, one process each, judged by exit status and both outputs. */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { deflateSync } from 'node:zlib'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { STAR, withGap } from '../writing/star.ts'

let folder = ''
let command = ''

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'nestwright-cli-'))
  command = join(folder, 'command', 'nestwright.js')
  mkdirSync(join(folder, 'command'))
  file('command/package.json', '{ "type": "module" }')
  spawnSync(process.execPath, ['.tools/bundle.mjs', join(folder, 'command')], { stdio: 'inherit' })
  mkdirSync(join(folder, 'folder.json'))
  mkdirSync(join(folder, 'folder.pdf'))
  file('other.pdf', '%PDF-1.4\n1 0 obj\n<< /Length 5 >>\nstream\nhello\nendstream\nendobj\n')
  const bomb = deflateSync(`{${' '.repeat(40_000_000)}`)
  file('bomb.pdf', pdfOf(...Array.from({ length: 60 }, () => bomb)))
  file('inside.pdf', pdfOf(deflateSync(JSON.stringify({ ...STAR, version: 2 }))))
  file('star.json', JSON.stringify(STAR))
  file('turned.json', JSON.stringify({ ...STAR, units: STAR.units.map((unit) => (unit.id === 'g1' ? { ...unit, turn: 0 } : unit)) }))
  file('gap.json', JSON.stringify(withGap(STAR)))
  file('bom.json', `\uFEFF${JSON.stringify(STAR)}`)
  file('empty.json', '')
  file('binary.json', new Uint8Array([0x7b, 0xff, 0xfe, 0x00]))
  file('text.json', 'not a block\nat all')
  // What a terminal would obey, and what turns writing round.
  file('evil.json', JSON.stringify(STAR).replace('"name":"', '"name":"\\u001b[31mred\\u202eback\\u0007\\ntwo '))
  file('evil-id.json', JSON.stringify({ ...STAR, units: [{ ...STAR.units[0], id: '\u202e\u2066\u001b[2J\n' }] }))
  file('turn.json', JSON.stringify({ ...STAR, units: [{ ...STAR.units[0], turn: 7 }] }))
})

afterAll(() => rmSync(folder, { recursive: true, force: true }))

function file(name: string, content: string | Uint8Array): void {
  writeFileSync(join(folder, name), content)
}

/** A PDF that holds these files, packed, and nothing else. */
const pdfOf = (...files: readonly Uint8Array[]): Uint8Array =>
  Buffer.concat([
    Buffer.from('%PDF-1.7\n'),
    ...files.flatMap((bytes) => [
      Buffer.from(`1 0 obj\n<< /Type /EmbeddedFile /Filter /FlateDecode /Length ${bytes.length} >>\nstream\n`),
      bytes,
      Buffer.from('\nendstream\nendobj\n'),
    ]),
  ])

function nestwright(...args: string[]): { status: number | null; out: string; err: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, ...args], { cwd: folder, encoding: 'utf8', maxBuffer: 1 << 28 })
  return { status, out: stdout, err: stderr }
}

describe('what can be read', () => {
  it('prints the report of a star', () => {
    const { status, out, err } = nestwright('report', 'star.json')
    expect([status, err]).toEqual([0, ''])
    expect(JSON.parse(out)).toMatchObject({ format: 'nestwright.report', version: 1, block: { finished: [12, 12], unfinished: [12.5, 12.5] } })
  })

  it('prints the report of a layout with a gap, and says so by its status', () => {
    const { status, out } = nestwright('report', 'gap.json')
    expect(status).toBe(1)
    expect(JSON.parse(out).problems.map(({ code }: { code: string }) => code)).toContain('gap')
  })

  it.each([['cutlist'], ['steps']])('%s names the problems of a layout on standard error', (name) => {
    const { status, out, err } = nestwright(name, 'gap.json')
    expect(status).toBe(1)
    expect(out).not.toBe('')
    expect(err).toMatch(/^gap at /)
  })

  it('makes a quilt of copies, which all commands of a quilt read', () => {
    const made = nestwright('setting', 'star.json', '--columns', '2', '--rows', '2', '--press', 'alternate', '--out', 'copies.json')
    expect(nestwright('quilt', 'copies.json')).toEqual(made)
    expect(nestwright('cutlist', 'copies.json').out).toContain('Cut list')
    expect(nestwright('cutlist', 'copies.json', '--csv').out.split('\r\n').length).toBeGreaterThan(3)
    expect(nestwright('steps', 'copies.json').out).toContain('Join position 1 to position 2')
    expect(nestwright('picture', 'copies.json', 'copies.svg').status).toBe(0)
    expect(readFileSync(join(folder, 'copies.svg'), 'utf8')).toContain('<svg')
    expect(nestwright('booklet', 'copies.json', 'copies.pdf').status).toBe(0)
    expect(readFileSync(join(folder, 'copies.pdf')).subarray(0, 5).toString()).toBe('%PDF-')
    const refused = nestwright('cutlist', 'copies.json', '--part', '2')
    expect([refused.status, refused.out, refused.err.startsWith('--part: ')]).toEqual([2, '', true])
    expect(nestwright('steps', 'star.json', '--part', '1').status).toBe(2)
  })

  it('prints a quilt of copies, and refuses what it cannot lay', () => {
    const { status, out } = nestwright('setting', 'star.json', '--columns', '2', '--rows=2', '--turn', 'free')
    expect(status).toBe(0)
    expect(JSON.parse(out)).toMatchObject({ format: 'nestwright.quilt-report', pressing: { proved: true } })
    expect(JSON.parse(out).places).toHaveLength(4)
    expect(nestwright('setting', 'gap.json', '--columns', '2', '--rows', '2').status).toBe(1)
    for (const [args, place] of [
      [['setting', 'star.json', '--rows', '2'], '--columns'],
      [['setting', 'star.json', '--columns', '0', '--rows', '2'], '--columns'],
      [['setting', 'star.json', '--columns', '2', '--rows', '2', '--turn', 'around'], '--turn'],
      [['setting', 'star.json', '--columns', '2', '--rows', '2', '--press'], '--press'],
      [['setting', '--columns', '2', '--rows', '2'], 'setting'],
    ] as const) {
      const refused = nestwright(...args)
      expect([refused.status, refused.out, refused.err.startsWith(`${place}: `), refused.err.endsWith('\n')]).toEqual([2, '', true, true])
    }
  })

  it('compares a sewn block with the one laid out', () => {
    const { status, out } = nestwright('sewn', 'star.json', 'star.json')
    expect([status, JSON.parse(out)]).toMatchObject([0, { format: 'nestwright.sewn', differences: [], moves: [], proved: true }])
    expect(nestwright('sewn', 'star.json', 'gap.json').status).toBe(1)
    expect(nestwright('sewn', 'star.json')).toMatchObject({
      status: 2,
      out: '',
      err: 'sewn: give two block files: the plan, then the block as sewn\n',
    })
  })

  it('says in sentences how a sewn block differs from its plan', () => {
    const star = nestwright('sewn', 'star.json', 'star.json', '--text')
    expect([star.status, star.out.split('\n')[0]]).toEqual([0, 'The sewn block matches the plan.'])
    const { status, out } = nestwright('sewn', 'star.json', 'turned.json', '--text')
    expect(status).toBe(0)
    expect(out).toContain('One unit is different:\n  The top goose is turned.')
    expect(out).toContain('One change fixes it:\n  1. ')
    expect(out).toMatch(/^As sewn, /m)
    expect(out).not.toMatch(/\bg1\b/)
    expect(nestwright('sewn', 'star.json', 'gap.json', '--text')).toMatchObject({ status: 1, err: expect.stringMatching(/^gap at /) })
  })

  it('prints the cut list as text and as a table', () => {
    expect(nestwright('cutlist', 'star.json').out).toContain('7 1/4 × 7 1/4 in')
    expect(nestwright('cutlist', 'star.json', '--csv').out).toMatch(/^fabric,unit,shape,count,width,length,/)
    expect(nestwright('cutlist', 'star.json', '--csv', '--ids').out).toMatch(/fabric_id,unit_ids\r\n/)
    expect(nestwright('cutlist', 'star.json', '--csv', '--german').out).toMatch(/^Stoff;Einheit;Form;Anzahl;[\s\S]*;7 1\/4;7 1\/4;7,25;7,25;in;/)
    expect(nestwright('cutlist', 'star.json', '--csv', '--of', 'units').out).toMatch(/^unit,kind,hand,count,finished_width,/)
    expect(nestwright('cutlist', 'star.json', '--csv', '--of=cloth').out).toMatch(/^fabric,colour,length,usable_width,/)
  })

  it('prints size charts', () => {
    const chart = nestwright('chart', '--from', '6', '--to=6')
    expect([chart.status, chart.err]).toEqual([0, ''])
    // Geese four at a time, finished 6 by 3, from 7 1/4 and 3 7/8: common practice, no source.
    expect(chart.out).toMatch(/7 1\/4/)
    expect(chart.out).toMatch(/3 7\/8/)
  })

  it('prints how it is used when asked', () => {
    const { status, out, err } = nestwright('--help')
    expect([status, err]).toEqual([0, ''])
    expect(out).toContain('cutlist FILE')
  })

  it('explains each command on its own, in both ways of asking', () => {
    for (const name of ['report', 'cutlist', 'steps', 'chart', 'setting', 'sewn', 'booklet', 'picture']) {
      const { status, out, err } = nestwright('help', name)
      expect([status, err]).toEqual([0, ''])
      expect(out).toMatch(new RegExp(`^Usage: nestwright ${name}\\b`))
      expect(nestwright(name, '--help')).toEqual({ status, out, err })
    }
    for (const kind of ['geese', 'hst', 'hst4', 'hst8', 'hourglass', 'diamond', 'setting']) {
      expect(nestwright('help', 'chart').out).toContain(kind)
      expect(nestwright('chart', '--kind', kind, '--to', '2').status).toBe(0)
    }
  })

  it('says which version it is', () => {
    const { version } = JSON.parse(readFileSync('package.json', 'utf8'))
    expect(nestwright('--version')).toEqual({ status: 0, out: `nestwright ${version}\n`, err: '' })
  })
})

describe('what cannot be used', () => {
  it.each([
    [['report', 'turn.json'], 'units[0].turn'],
    [['report', 'text.json'], 'text.json'],
    [['report', 'none.json'], 'none.json'],
    [['report', 'folder.json'], 'folder.json'],
    [['report', 'binary.json'], 'binary.json'],
    [['report', 'bom.json'], 'bom.json'],
    [['report', 'empty.json'], 'empty.json'],
    [['cutlist', 'none.json'], 'none.json'],
    [['steps', 'none.json'], 'none.json'],
    [['report'], 'report'],
    [['report', 'star.json', 'gap.json'], 'gap.json'],
    [['report', 'star.json', '--csv'], '--csv'],
    [['cutlist', 'star.json', '--of', 'units'], '--of'],
    [['cutlist', 'star.json', '--ids'], '--ids'],
    [['cutlist', 'star.json', '--csv', '--of', 'yarn'], '--of'],
    [['booklet', 'star.json'], 'booklet'],
    [['booklet', 'star.json', 'out.json'], 'out.json'],
    [['booklet', 'star.json', 'out.pdf', 'more.pdf'], 'more.pdf'],
    [['booklet', 'star.json', 'out.pdf', '--paper', 'a3'], '--paper'],
    [['booklet', 'star.json', 'out.pdf', '--only', 'steps'], '--only'],
    [['booklet', 'turn.json', 'out.pdf'], 'units[0].turn'],
    [['booklet', 'star.json', 'nowhere/out.pdf'], 'nowhere/out.pdf'],
    [['booklet', 'star.json', 'folder.pdf'], 'folder.pdf'],
    [['report', 'other.pdf'], 'other.pdf'],
    [['report', 'bomb.pdf'], 'bomb.pdf'],
    [['picture', 'star.json', `${'x'.repeat(300)}.svg`], 'shorter'],
    [['report', 'x'.repeat(300)], 'too long a name'],
    [['report', 'star.json/x'], 'no such file'],
    [['sewn', '-', '-'], 'standard input is read once'],
    [['report', 'inside.pdf'], 'version'],
    [['picture', 'star.json', 'out.svg', '--view', 'above'], '--view'],
    [['sew'], 'sew'],
    [['__proto__'], '__proto__'],
    [['help', 'sew'], 'sew'],
    [['sew', '--help'], 'sew'],
    [[], 'Usage'],
    [['chart', '--kind', 'swans'], '--kind'],
    [['chart', '--kind', 'constructor'], '--kind'],
    [['chart', '--unit', 'ell'], '--unit'],
    [['chart', '--seam', '0'], '--seam'],
    [['chart', '--seam', 'wide'], '--seam'],
    [['chart', '--from', '-1'], '--from'],
    [['chart', '--from', '3', '--to', '2'], '--to'],
    [['chart', '--step', '1/1000000'], '--step'],
    [['chart', '--step'], '--step'],
    [['chart', '--step', '1', '--step', '2'], '--step'],
    [['chart', 'star.json'], 'star.json'],
    [['line\nbreak'], 'line break'],
  ])('%j names %s', (args, place) => {
    const { status, out, err } = nestwright(...args)
    expect([status, out]).toEqual([2, ''])
    expect(err).toMatch(/^[^\n]+\n$/)
    expect(err).toContain(place)
    expect(readdirSync(folder).filter((name) => name.startsWith('out.') || name.endsWith('.part'))).toEqual([])
  })
})

describe('what reaches a terminal', () => {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not reach it.
  const OBEYED = /[\u0000-\u0009\u000b-\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/

  it.each([
    [['cutlist', 'evil.json']],
    [['steps', 'evil.json']],
    [['cutlist', 'evil.json', '--csv']],
    [['report', 'evil-id.json']],
    [['report', '\u202egnp.json']],
  ])('%j holds nothing that it would obey', (args) => {
    const { out, err } = nestwright(...args)
    expect(`${out}${err}`).not.toBe('')
    expect(`${out}${err}`).not.toMatch(OBEYED)
  })

  it('keeps a name of several lines on one', () => {
    expect(nestwright('cutlist', 'evil.json').out).toMatch(/^Cut list: \[31mred back two Evening star/)
  })
})

describe('what is written', () => {
  it('loads what only printing needs when somebody prints', () => {
    expect(readFileSync(command, 'utf8')).not.toContain('PDFDocument')
  })

  it('prints a booklet, and reads it as the block that lies inside', () => {
    expect(nestwright('booklet', 'star.json', 'star.pdf', '--paper=a4')).toEqual({ status: 0, out: '', err: '' })
    expect(nestwright('report', 'star.pdf').out).toBe(nestwright('report', 'star.json').out)
    expect(nestwright('booklet', 'star.pdf', 'again.pdf', '--paper', 'a4').status).toBe(0)
    expect(readFileSync(join(folder, 'again.pdf')).equals(readFileSync(join(folder, 'star.pdf')))).toBe(true)
  })

  it('prints what it can of a layout with a gap, and says so by its status', () => {
    const { status, err } = nestwright('booklet', 'gap.json', 'gap.pdf')
    expect([status, err.startsWith('gap at ')]).toEqual([1, true])
    expect(existsSync(join(folder, 'gap.pdf'))).toBe(true)
  })

  it('saves a picture to scale', () => {
    expect(nestwright('picture', 'star.json', 'star.svg', '--view', 'outline').status).toBe(0)
    expect(readFileSync(join(folder, 'star.svg'), 'utf8')).toMatch(/^<svg [^>]*width="12\.25in" height="12\.25in"/)
  })
})
