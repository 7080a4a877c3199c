import { execFile } from 'node:child_process'

/** Where the packed package is tried out: an empty project outside this one, as a stranger would have it. */
export interface Bench {
  readonly folder: string
  readonly tarball: string
  readonly doors: readonly string[]
}

export interface Ended {
  readonly code: number
  readonly output: string
  readonly errors: string
}

/** Runs a program to its end, whatever its exit code. */
export function run(program: string, options: readonly string[], folder: string): Promise<Ended> {
  return new Promise((done) => {
    const child = execFile(program, options, { cwd: folder, maxBuffer: 64 * 1024 * 1024 }, (_, output, errors) => {
      done({ code: child.exitCode ?? -1, output, errors })
    })
  })
}

/** Runs a program that must end well, and gives what it printed. */
export async function runWell(program: string, options: readonly string[], folder: string): Promise<string> {
  const { code, output, errors } = await run(program, options, folder)
  if (code !== 0) throw new Error(`${program} ${options.join(' ')} ended with ${code}\n${output}${errors}`)
  return output
}

export function demand(holds: boolean, otherwise: string): void {
  if (!holds) throw new Error(otherwise)
}
