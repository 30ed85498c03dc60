/** The words after a command's name: options with a value, flags without one, and files. */
import { parseRational, type Rational } from '../index.ts'
import { printable, refuse } from './result.ts'

export interface Arguments<Option extends string> {
  readonly options: ReadonlyMap<Option, string>
  readonly flags: ReadonlySet<string>
  readonly files: readonly string[]
}

/**
 * In      a command's name and its words; the options it knows that take a value, and its flags.
 * Out     what was given. `--seam 1/4` and `--seam=1/4` are the same; `-` alone is a file, standard input.
 * Errors  refuses an unknown option, one given twice and one without its value.
 */
export function parseArguments<Option extends string>(
  command: string,
  args: readonly string[],
  names: readonly Option[],
  knownFlags: readonly string[] = [],
): Arguments<Option> {
  const options = new Map<Option, string>()
  const flags = new Set<string>()
  const files: string[] = []
  const words = args.flatMap((arg) => (/^--[a-z]+=/.test(arg) ? [arg.slice(0, arg.indexOf('=')), arg.slice(arg.indexOf('=') + 1)] : [arg]))
  for (let index = 0; index < words.length; index += 1) {
    const word = words[index] as string
    const option = names.find((name) => name === word)
    if (knownFlags.includes(word)) flags.add(word)
    else if (option !== undefined) {
      index += 1
      if (options.has(option)) refuse(option, 'is given twice')
      options.set(option, words[index] ?? refuse(option, 'needs a value'))
    } else if (word.startsWith('-') && word !== '-') refuse(printable(word), `${command} has no such option`)
    else files.push(word)
  }
  return { options, flags, files }
}

/** The one file that a command reads. */
export function oneFile(command: string, [file, another]: readonly string[]): string {
  if (file === undefined) return refuse(command, 'give the block file to read')
  if (another !== undefined) return refuse(printable(another), `${command} reads one file`)
  return file
}

/** The file that a command reads and the one that it writes, whose name ends in `ending` (`.pdf`). */
export function inputAndOutput(command: string, [input, output, another]: readonly string[], ending: string): [input: string, output: string] {
  if (input === undefined || output === undefined) return refuse(command, `give the block file to read and the file to write, such as block${ending}`)
  if (another !== undefined) return refuse(printable(another), `${command} reads one file and writes one`)
  if (!output.toLowerCase().endsWith(ending)) return refuse(printable(output), `give the file to write a name that ends in ${ending}`)
  return [input, output]
}

/** One of the names that an option knows. */
export function choiceOf<Name extends string>(option: string, given: string, known: readonly Name[]): Name {
  return known.find((name) => name === given) ?? refuse(option, `${printable(given)} is unknown; choose ${known.join(', ')}`)
}

/** A length above nothing, in the unit asked for: `2.5` or `2 1/2`. */
export function positiveLength(option: string, given: string): Rational {
  const length = parseRational(given)
  if (length === null) return refuse(option, `${printable(given)} is not a length; write 2.5 or "2 1/2"`)
  if (length.n <= 0n) return refuse(option, 'must be more than nothing')
  return length
}
