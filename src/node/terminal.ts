import colors from 'picocolors'
import { plainPaint, type PageOptions, type Paint } from '../printing/index.js'

/** Everything that the command line takes from the machine it runs on. */
export interface CommandLineIo {
  /** Takes what is asked for. */
  readonly out: (text: string) => void
  /** Takes notes and problems. */
  readonly err: (text: string) => void
  /** Whether what goes out is seen in color. */
  readonly color: boolean
  /** Today as YYYY-MM-DD; the only place where a date is filled in. */
  readonly today: string
  /** Columns of the page; 80 when left out. */
  readonly width?: number
}

/** The real thing: this process, its terminal and its calendar. */
export function terminal(): CommandLineIo {
  const { stdout, stderr } = process
  stdout.on('error', leaveQuietly)
  return {
    out: (text) => void stdout.write(text),
    err: (text) => void stderr.write(text),
    color: stdout.isTTY && colors.isColorSupported,
    today: calendarDay(new Date()),
    width: stdout.isTTY ? Math.min(Math.max(stdout.columns, narrowest), widest) : 80,
  }
}

const narrowest = 40
const widest = 100

/** How pages are printed on this terminal. */
export function pageFor(io: CommandLineIo): PageOptions {
  return { color: paintFor(io), ...(io.width === undefined ? {} : { width: io.width }) }
}

function paintFor({ color }: CommandLineIo): Paint {
  if (!color) return plainPaint
  const { bold, red, yellow, cyan, blue, green, dim, magenta } = colors.createColors(true)
  const both = (text: string): string => bold(red(text))
  return {
    stop: both,
    must: red,
    should: yellow,
    advice: cyan,
    open: magenta,
    clear: green,
    caution: both,
    plain: blue,
    heading: bold,
    faint: dim,
  }
}

function calendarDay(now: Date): string {
  const two = (part: number): string => String(part).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

/** Whoever reads us may stop reading, as `head` does; that is no error. */
function leaveQuietly(error: NodeJS.ErrnoException): void {
  if (error.code !== 'EPIPE') throw error
  process.exit()
}
