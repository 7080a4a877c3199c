import { Command, CommanderError } from 'commander'
import { packageName } from '../findings/index.js'
import { printProblem } from '../model/index.js'
import { addAskCommand } from './ask-command.js'
import { addCheckCommand } from './check-command.js'
import { addCountCommand } from './count-command.js'
import { CouldNotRun } from './could-not-run.js'
import { exitCodes, type ExitCode } from './exit-codes.js'
import { addExplainCommand } from './explain-command.js'
import { addRulesCommand } from './rules-command.js'
import { addSizeCommand } from './size-command.js'
import type { CommandLineIo } from './terminal.js'

/**
 * Runs one command and gives its exit code: 0 clear, 1 failing, 2 could not run, 3 open. It prints through `io` only and
 * never ends the process, so an app or a test can call it.
 *
 * @example
 * const code = await runCommandLine(['check', 'house.yaml'], { out, err, color: false, today: '2025-09-20' })
 */
export async function runCommandLine(argv: readonly string[], io: CommandLineIo): Promise<ExitCode> {
  let code: ExitCode = exitCodes.clear
  const program = programFor(io, (finished) => {
    code = finished
  })
  try {
    await program.parseAsync(argv, { from: 'user' })
    return code
  } catch (reason) {
    return tell(reason, io)
  }
}

function programFor(io: CommandLineIo, finish: (code: ExitCode) => void): Command {
  const program = new Command('hydronic-rulebook')
    .description(
      'Checks a heating installation against physics, its makers and its town. Everything it says is advice.',
    )
    .version(packageName.slice(packageName.lastIndexOf(' ') + 1))
    .exitOverride()
    .showSuggestionAfterError()
    .configureOutput({
      writeOut: io.out,
      writeErr: io.err,
      getOutHelpWidth: () => pageWidth,
      getErrHelpWidth: () => pageWidth,
      getOutHasColors: () => false,
      getErrHasColors: () => false,
    })
    .addHelpText('after', examples)
  addCheckCommand(program, io, finish)
  addAskCommand(program, io, finish)
  addCountCommand(program, io, finish)
  addSizeCommand(program, io, finish)
  addRulesCommand(program, io, finish)
  addExplainCommand(program, io, finish)
  return program
}

const pageWidth = 80
const examples = `
Examples:
  $ hydronic-rulebook check house.yaml
  $ hydronic-rulebook ask house.yaml
  $ hydronic-rulebook explain relief/way house.yaml B1`

/** Says in words why nothing was judged. */
function tell(reason: unknown, io: CommandLineIo): ExitCode {
  if (reason instanceof CommanderError) return reason.exitCode === 0 ? exitCodes.clear : exitCodes.couldNotRun
  if (reason instanceof CouldNotRun) {
    const count = reason.problems.length
    io.err(
      `${[...reason.problems.map(printProblem), `${count} problem${count === 1 ? '' : 's'}; nothing was judged.`].join('\n')}\n`,
    )
    return exitCodes.couldNotRun
  }
  const error = reason instanceof Error ? reason : new Error(String(reason))
  io.err(`Unexpected error: ${error.message.replace(/\s+/g, ' ')}; DEBUG=1 shows more.\n${stackOf(error)}`)
  return exitCodes.couldNotRun
}

function stackOf({ stack }: Error): string {
  const { DEBUG } = process.env
  return DEBUG === undefined || DEBUG === '' || stack === undefined ? '' : `${stack}\n`
}
