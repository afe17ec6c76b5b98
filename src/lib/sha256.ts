/**
 * SHA-256 of a text in UTF-8, as Base64, at once and wherever the program runs: the digest of the Web Crypto
 * interface is asynchronous, and that of Node is not there in a browser. FIPS 180-4, section 6.2.
 */

const PRIMES = ((): number[] => {
  const found: number[] = [];
  for (let n = 2; found.length < 64; n++) if (found.every((prime) => n % prime !== 0)) found.push(n);
  return found;
})();
/** The first 32 bits of the fraction of a root. */
const fraction = (root: number): number => ((root - Math.floor(root)) * 2 ** 32) | 0;
const START = PRIMES.slice(0, 8).map((prime) => fraction(Math.sqrt(prime)));
const ROUND = PRIMES.map((prime) => fraction(Math.cbrt(prime)));

const BLOCK_BYTES = 64;
const rotated = (word: number, by: number): number => (word >>> by) | (word << (32 - by));

export function sha256Base64(text: string): string {
  const bytes = new TextEncoder().encode(text);
  const padded = new Uint8Array(Math.ceil((bytes.length + 9) / BLOCK_BYTES) * BLOCK_BYTES);
  padded.set(bytes);
  padded[bytes.length] = 0x80;
  const words = new DataView(padded.buffer);
  words.setBigUint64(padded.length - 8, BigInt(bytes.length) * 8n);
  const hash = Int32Array.from(START);
  const w = new Int32Array(BLOCK_BYTES);
  const at = (list: ArrayLike<number>, i: number): number => list[i] as number;
  for (let block = 0; block < padded.length; block += BLOCK_BYTES) {
    for (let i = 0; i < 64; i++) {
      if (i < 16) w[i] = words.getInt32(block + 4 * i);
      else {
        const [x, y] = [at(w, i - 15), at(w, i - 2)];
        const s0 = rotated(x, 7) ^ rotated(x, 18) ^ (x >>> 3);
        const s1 = rotated(y, 17) ^ rotated(y, 19) ^ (y >>> 10);
        w[i] = at(w, i - 16) + s0 + at(w, i - 7) + s1;
      }
    }
    let [a, b, c, d, e, f, g, h] = [...hash] as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    for (let i = 0; i < 64; i++) {
      const s1 = rotated(e, 6) ^ rotated(e, 11) ^ rotated(e, 25);
      const t1 = h + s1 + ((e & f) ^ (~e & g)) + at(ROUND, i) + at(w, i);
      const s0 = rotated(a, 2) ^ rotated(a, 13) ^ rotated(a, 22);
      const t2 = s0 + ((a & b) ^ (a & c) ^ (b & c));
      [h, g, f, e, d, c, b, a] = [g, f, e, (d + t1) | 0, c, b, a, (t1 + t2) | 0];
    }
    [a, b, c, d, e, f, g, h].forEach((word, i) => {
      hash[i] = at(hash, i) + word;
    });
  }
  const digest = new DataView(new ArrayBuffer(32));
  hash.forEach((word, i) => {
    digest.setInt32(4 * i, word);
  });
  return btoa(String.fromCharCode(...new Uint8Array(digest.buffer)));
}
