/** In place of the decoder for WOFF2, which no font of ours is. */
export default function decompress() {
  throw new Error('WOFF2 fonts cannot be read.');
}
