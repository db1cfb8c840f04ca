// Bench: meshes of two open collections. In: a file's bytes. Out: triangles, three corners of x, y, z each, z up.

/** One side up, another back: these files have y up. */
const pointAt = (bytes, at) => [bytes.readFloatLE(at), -bytes.readFloatLE(at + 8), bytes.readFloatLE(at + 4)];

/** Version 3 and 4: points of 52 bytes and more, then triangles of three 16-bit numbers. */
function readPmd(bytes) {
  const version = bytes.readUInt32LE(4);
  const points = bytes.readUInt32LE(12);
  const textures = version >= 4 ? bytes.readUInt32LE(16) : 1;
  const start = version >= 4 ? 20 : 16;
  const size = 44 + 8 * textures;
  const end = start + points * size;
  return Array.from({ length: bytes.readUInt32LE(end) }, (_, triangle) =>
    [0, 1, 2].map((k) => pointAt(bytes, start + size * bytes.readUInt16LE(end + 4 + 6 * triangle + 2 * k))),
  );
}

/** Version 4: meshes of several frames, of which the first is taken. */
function readG3d(bytes) {
  if (bytes[3] !== 4) throw new Error(`version ${bytes[3]} of this format`);
  const triangles = [];
  let at = 7;
  for (let left = bytes.readUInt16LE(4); left > 0; left -= 1) {
    const [frames, points, corners] = [64, 68, 72].map((from) => bytes.readUInt32LE(at + from));
    const textures = [...bytes.readUInt32LE(at + 112).toString(2)].filter((bit) => bit === '1').length;
    const start = at + 116 + 64 * textures;
    const list = start + frames * points * 24 + (textures > 0 ? 8 * points : 0);
    const corner = (k) => pointAt(bytes, start + 12 * bytes.readUInt32LE(list + 4 * k));
    for (let k = 0; k < corners; k += 3) triangles.push([corner(k), corner(k + 1), corner(k + 2)]);
    at = list + 4 * corners;
  }
  return triangles;
}

export const readOpenModel = (bytes) =>
  bytes.toString('latin1', 0, 3) === 'G3D' ? readG3d(bytes) : readPmd(bytes);
