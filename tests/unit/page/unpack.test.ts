import { randomBytes } from 'node:crypto';
import { compress } from 'lzma1';
import { describe, expect, it } from 'vitest';
import { unpack } from '../../../packages/page/src/opener/unpack.js';

const packed = (bytes: Uint8Array): Uint8Array => new Uint8Array(compress(Buffer.from(bytes), 9));

describe('the opener of the page unpacks', () => {
  it.each([
    ['one byte', Buffer.from('x')],
    ['a text', Buffer.from('nitrite, nitrate; '.repeat(500))],
    ['letters of several bytes', Buffer.from('µ°ñ 水 '.repeat(77))],
    ['bytes without order, which hold no copies', randomBytes(3000)],
    [
      'far and near copies',
      Buffer.concat([randomBytes(300), Buffer.alloc(70_000, 'abcab'), randomBytes(300)]),
    ],
  ])('%s, byte for byte', (_, bytes) => {
    expect(Buffer.from(unpack(packed(bytes))).equals(bytes)).toBe(true);
  });

  it('tells a stream that copies from before its beginning', () => {
    const text = packed(Buffer.from('nitrite, nitrate; '.repeat(500)));
    text.fill(0xff, 14, 18);
    expect(() => unpack(text)).toThrow(RangeError);
  });
});
