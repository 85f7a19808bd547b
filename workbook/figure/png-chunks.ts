const METRE_IN_INCHES = 1 / 0.0254;
/** Signature and first chunk of a PNG, behind which others may stand. */
const BEHIND_HEAD = 33;

/** A PNG (ISO/IEC 15948) that says how many dots an inch has, and what it shows. */
export function withChunks(png: Uint8Array, dpi: number, alt: string): Uint8Array<ArrayBuffer> {
  const perMetre = Math.round(dpi * METRE_IN_INCHES);
  const size = new Uint8Array(9);
  const view = new DataView(size.buffer);
  view.setUint32(0, perMetre);
  view.setUint32(4, perMetre);
  size[8] = 1;
  const text = new TextEncoder().encode(`Description\0\0\0\0\0${alt}`);
  const chunks = [chunk('pHYs', size), chunk('iTXt', text)];
  const out = new Uint8Array(png.length + chunks.reduce((sum, each) => sum + each.length, 0));
  out.set(png.subarray(0, BEHIND_HEAD));
  let end = BEHIND_HEAD;
  for (const each of chunks) {
    out.set(each, end);
    end += each.length;
  }
  out.set(png.subarray(BEHIND_HEAD), end);
  return out;
}

function chunk(name: string, data: Uint8Array): Uint8Array {
  const out = new Uint8Array(12 + data.length);
  const view = new DataView(out.buffer);
  view.setUint32(0, data.length);
  out.set(new TextEncoder().encode(name), 4);
  out.set(data, 8);
  view.setUint32(8 + data.length, checkSum(out.subarray(4, 8 + data.length)));
  return out;
}

/** CRC-32 as the standard has it. */
function checkSum(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}
