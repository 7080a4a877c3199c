import { run } from '../node/commands/run.js'

/** The report of a seed as the command line prints it, on a fixed day. */
export async function seedReport(name: string, ...options: readonly string[]): Promise<string> {
  return (await run(['check', `seeds/${name}.yaml`, ...options])).out
}

/** What changes with every rule and every release, and says nothing about the page. */
export function withoutDigests(text: string): string {
  return text
    .replace(/(rulebook|document)(\s+)[0-9a-f]{12}/g, '$1$2############')
    .replace(/(base|hydronic-rulebook)(\s+)\d+\.\d+\.\d+/g, '$1$2#.#.#')
}
