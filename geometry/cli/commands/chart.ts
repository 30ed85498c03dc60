/** `chart`: the sizes to cut for a row of finished sizes. */
import { CHART_KINDS, type ChartKind, chartCsv, chartText, type Rational, sizeChart } from '../../index.ts'
import { choiceOf, parseArguments, positiveLength } from '../arguments.ts'
import { type Command, done, printable, refuse } from '../result.ts'

const OPTIONS = ['--kind', '--unit', '--seam', '--from', '--to', '--step', '--larger'] as const

/** What a ruler and a maker would ask for first, in each measure. */
const DEFAULTS = {
  in: { '--seam': '1/4', '--from': '1', '--to': '12', '--step': '1/2' },
  cm: { '--seam': '0.75', '--from': '2', '--to': '30', '--step': '1' },
} as const

const MOST_ROWS = 2000

export const chartCommand: Command = {
  name: 'chart',
  run: (args) => {
    const { options, flags, files } = parseArguments('chart', args, OPTIONS, ['--csv'])
    if (files[0] !== undefined) refuse(printable(files[0]), 'chart reads no file')
    const chart = sizeChart(chartAsked(options))
    return done(flags.has('--csv') ? chartCsv(chart) : chartText(chart))
  },
}

function chartAsked(options: ReadonlyMap<(typeof OPTIONS)[number], string>): Parameters<typeof sizeChart>[0] {
  const unit = choiceOf('--unit', options.get('--unit') ?? 'in', ['in', 'cm'] as const)
  const kind = choiceOf<ChartKind>('--kind', options.get('--kind') ?? 'geese', CHART_KINDS)
  const length = (name: keyof (typeof DEFAULTS)['in']): Rational => positiveLength(name, options.get(name) ?? DEFAULTS[unit][name])
  const [seam, from, to, step] = [length('--seam'), length('--from'), length('--to'), length('--step')]
  if (to.n * from.d < from.n * to.d) refuse('--to', 'must not be less than --from')
  const rows = ((to.n * from.d - from.n * to.d) * step.d) / (to.d * from.d * step.n) + 1n
  if (rows > BigInt(MOST_ROWS)) refuse('--step', `would make ${rows} rows; the most is ${MOST_ROWS}`)
  const larger = options.get('--larger')
  return { kind, unit, seam, from, to, step, ...(larger === undefined ? {} : { oversize: positiveLength('--larger', larger) }) }
}
