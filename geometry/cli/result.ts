/**
 * What a command hands back to the shell, and how it refuses.
 *
 * Exit status  0 done; 1 the layout has an error among its problems (the output is printed all the same); 2 the file or the arguments could
 *              not be used: one line on standard error that names the place, nothing on standard output.
 */
import { ERRORS, inEnglish, printed, type Report, sanitiseLine } from '../index.ts'
import type { CommandName } from './usage.ts'

export interface CommandResult {
  readonly exitStatus: 0 | 1 | 2
  readonly stdout: string
  readonly stderr: string
}

/** A command of the command line. `args` are the words after its name. Throws a `Refusal` where they cannot be used. */
export interface Command {
  readonly name: CommandName
  readonly run: (args: readonly string[]) => CommandResult | Promise<CommandResult>
}

/** What a maker can put right: becomes the one line on standard error, with exit status 2. */
export class Refusal extends Error {}

/** Stops the command. `place` is the option, file or path inside the file that is wrong; the message says what to do. */
export function refuse(place: string, message: string): never {
  throw new Refusal(place === '' ? message : `${place}: ${message}`)
}

/** What somebody typed, safe to show on one line. */
export const printable = (typed: string): string => sanitiseLine(typed).slice(0, 200) || '(nothing)'

/** Done, with this on standard output. */
export const done = (stdout: string): CommandResult => ({ exitStatus: 0, stdout, stderr: '' })

/** A value of the geometry as JSON, what it says in English; exit status 1 where its problems keep the block from being sewn. */
export function jsonResult(value: unknown, problems: Report['problems'], spaces = 2): CommandResult {
  const exitStatus = problems.some(({ code }) => ERRORS.has(code)) ? 1 : 0
  return { exitStatus, stdout: `${JSON.stringify(value, printed, spaces)}\n`, stderr: '' }
}

/** Text for people, with a line on standard error for each problem that keeps the block from being sewn. */
export function textResult(stdout: string, report: Report): CommandResult {
  const stderr = errorLines(report)
  return { exitStatus: stderr === '' ? 0 : 1, stdout, stderr }
}

const errorLines = ({ problems }: Report): string =>
  problems
    .filter(({ code }) => ERRORS.has(code))
    .map(({ code, at, message }) => `${code} at ${at.join(', ')}: ${sanitiseLine(inEnglish(message))}\n`)
    .join('')
