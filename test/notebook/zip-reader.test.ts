import { deflateRawSync } from 'node:zlib'
import { strFromU8, strToU8, zipSync } from 'fflate'
import { expect, test } from 'vitest'
import { zipReader } from '@/notebook/zip-reader.ts'

/**
 * A zip of one file, `a.txt` with "123456789", written by hand: local header, bytes, list of contents, end record. The
 * CRC-32 of these nine digits is 0xCBF43926, the check value of the algorithm (ITU-T V.42; RFC 1952 appendix uses the same).
 */
function zipByHand(crc: number, says = 9): Uint8Array {
  const packed = deflateRawSync('123456789')
  const name = Buffer.from('a.txt')
  const about = Buffer.alloc(16)
  about.writeUInt32LE(crc, 4)
  about.writeUInt32LE(packed.length, 8)
  about.writeUInt32LE(says, 12)
  const local = Buffer.alloc(30)
  local.writeUInt32LE(0x04034b50, 0)
  local.writeUInt16LE(20, 4)
  local.writeUInt16LE(8, 8)
  about.copy(local, 10)
  local.writeUInt16LE(name.length, 26)
  const listed = Buffer.alloc(46)
  listed.writeUInt32LE(0x02014b50, 0)
  listed.writeUInt16LE(20, 6)
  listed.writeUInt16LE(8, 10)
  about.copy(listed, 12)
  listed.writeUInt16LE(name.length, 28)
  const end = Buffer.alloc(22)
  end.writeUInt32LE(0x06054b50, 0)
  end.writeUInt16LE(1, 8)
  end.writeUInt16LE(1, 10)
  end.writeUInt32LE(listed.length + name.length, 12)
  end.writeUInt32LE(local.length + name.length + packed.length, 16)
  return new Uint8Array(Buffer.concat([local, name, packed, listed, name, end]))
}

test('a file comes out of a zip when its checksum holds, and not at all when it does not', () => {
  const sound = zipReader(zipByHand(0xcbf43926))
  expect(sound?.names).toEqual(['a.txt'])
  expect(strFromU8(sound?.read(['a.txt'])['a.txt'] ?? new Uint8Array())).toBe('123456789')
  expect(zipReader(zipByHand(0xcbf43927))?.read(['a.txt'])['a.txt']).toBeUndefined()
})

test('a file that claims more bytes than deflate could have packed fills no memory', () => {
  const claims = zipReader(zipByHand(0xcbf43926, 0xf000_0000))
  expect(claims?.read(['a.txt'])['a.txt']).toBeUndefined()
  const zeros = zipSync({ 'zeros.bin': new Uint8Array(3_000_000) }, { level: 9 })
  expect(zipReader(zeros)?.read(['zeros.bin'])['zeros.bin']?.length).toBe(3_000_000)
})

test('one broken file keeps no other from coming out', () => {
  const bytes = zipSync({ 'a.txt': strToU8('first'), 'b.txt': strToU8('second') }, { level: 0 })
  const at = Buffer.from(bytes).indexOf('first')
  bytes[at] = 'F'.charCodeAt(0)
  const read = zipReader(bytes)?.read(['a.txt', 'b.txt', 'c.txt'])
  expect(read?.['a.txt']).toBeUndefined()
  expect(strFromU8(read?.['b.txt'] ?? new Uint8Array())).toBe('second')
  expect(read?.['c.txt']).toBeUndefined()
})
