import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import canonicalize from 'canonicalize'

// The package is one function at run time; its types claim a module with a default member.
// eslint-disable-next-line @typescript-eslint/consistent-type-assertions
const canonical = canonicalize as unknown as (data: unknown) => string | undefined

/** SHA-256 of plain data in canonical JSON (RFC 8785), in hexadecimal: the same data, the same digest, on any machine. */
export function digestOf(data: unknown): string {
  return bytesToHex(sha256(utf8ToBytes(canonical(data) ?? '')))
}
