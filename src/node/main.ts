#!/usr/bin/env node
import { runCommandLine, terminal } from './index.js'

process.exitCode = await runCommandLine(process.argv.slice(2), terminal())
