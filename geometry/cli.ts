#!/usr/bin/env node
/**
 * The command line. Each command is a file in `cli/commands`; only this file and `cli/` know Node.
 *
 * In      the arguments after `nestwright`: a command, then its options and files (see `cli/usage.ts`).
 * Out     standard output, standard error and the exit status (see `cli/result.ts`).
 */
import { chartCommand } from './cli/commands/chart.ts'
import { cutlistCommand } from './cli/commands/cutlist.ts'
import { pictureCommand } from './cli/commands/picture.ts'
import { quiltCommand } from './cli/commands/quilt.ts'
import { reportCommand } from './cli/commands/report.ts'
import { settingCommand } from './cli/commands/setting.ts'
import { sewnCommand } from './cli/commands/sewn.ts'
import { stepsCommand } from './cli/commands/steps.ts'
import { type Command, type CommandResult, done, printable, Refusal, refuse } from './cli/result.ts'
import { commandUsage, USAGE } from './cli/usage.ts'
import { sanitiseLine } from './index.ts'

/** Filled in from package.json when the command is bundled. */
declare const NESTWRIGHT_VERSION: string

/** Loaded when somebody prints: the pages are as much code as all the rest. */
const bookletCommand: Command = {
  name: 'booklet',
  run: async (args) => (await import('./cli/commands/booklet.ts')).runBooklet(args),
}

const COMMANDS: readonly Command[] = [
  reportCommand,
  quiltCommand,
  cutlistCommand,
  stepsCommand,
  settingCommand,
  sewnCommand,
  chartCommand,
  bookletCommand,
  pictureCommand,
]

const NAMES = COMMANDS.map(({ name }) => name)

function run([name, ...args]: readonly string[]): CommandResult | Promise<CommandResult> {
  if (name === undefined) return refuse('', `Usage: nestwright ${NAMES.join('|')} …; nestwright --help says more`)
  if (name === '--version') return done(`nestwright ${NESTWRIGHT_VERSION}\n`)
  if (['--help', '-h', 'help'].includes(name)) return done(args[0] === undefined ? USAGE : commandUsage(commandCalled(args[0]).name))
  const command = commandCalled(name)
  return args.includes('--help') || args.includes('-h') ? done(commandUsage(command.name)) : command.run(args)
}

const commandCalled = (name: string): Command =>
  COMMANDS.find((command) => command.name === name) ??
  refuse(printable(name), `no such command; there are ${NAMES.slice(0, -1).join(', ')} and ${NAMES.at(-1)}`)

async function runSafely(args: readonly string[]): Promise<CommandResult> {
  try {
    return await run(args)
  } catch (error) {
    if (error instanceof Refusal) return { exitStatus: 2, stdout: '', stderr: `${sanitiseLine(error.message)}\n` }
    // Exit status 1 would say that the layout is at fault: a mistake of ours must not.
    return { exitStatus: 2, stdout: '', stderr: `nestwright itself failed: ${sanitiseLine(String(error))}\n` }
  }
}

// A reader that stops early (`nestwright report FILE | head`) is not an error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error
})
const { exitStatus, stdout, stderr } = await runSafely(process.argv.slice(2))
if (stderr !== '') process.stderr.write(stderr)
if (stdout !== '') process.stdout.write(stdout)
// Not exit(): a long report must reach its reader whole.
process.exitCode = exitStatus
