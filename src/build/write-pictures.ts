import { mkdir } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import sharp from 'sharp'
import type { Card } from '../components/card.ts'
import { picturePath } from '../components/paper-path.ts'
import type { ShelfPiece } from '../components/shelf-pieces.ts'

/** The measure that cards of links have in most places, in px. */
const [width, height, margin] = [1200, 630, 70]

/** Draws for each pattern the picture that a link to its page is shown with: the piece as it stands on the shelf, in the page's colours. */
export async function writePictures(cards: readonly Card[], folder: string): Promise<void> {
  for (const { slug, piece } of cards) {
    if (!piece) continue
    const file = join(folder, picturePath(slug))
    await mkdir(dirname(file), { recursive: true })
    await sharp(Buffer.from(pictureOf(piece))).png({ palette: true }).toFile(file)
  }
}

function pictureOf({ viewBox, turned, rows, outline }: ShelfPiece): string {
  const [, , across = 1, up = 1] = viewBox.split(' ').map(Number)
  const scale = Math.min((width - 2 * margin) / across, (height - 2 * margin) / up)
  const [w, h] = [across * scale, up * scale]
  const line = (d: string, px: number) => `<path d="${d}" fill="none" stroke="#14191c" stroke-linecap="round" stroke-width="${px / scale}"/>`
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><rect width="100%" height="100%" fill="#fbfcfb"/>`,
    `<svg x="${(width - w) / 2}" y="${(height - h) / 2}" width="${w}" height="${h}" viewBox="${viewBox}"><g${turned ? ` transform="${turned}"` : ''}>`,
    line(rows, 1.6), line(outline, 3), '</g></svg></svg>',
  ].join('')
}
