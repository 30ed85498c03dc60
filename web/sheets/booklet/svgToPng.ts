/** Turns a picture to scale from SVG into PNG, painted by the browser on a canvas with a white background. */

/** Pixels on a side, at most: more than any printer shows, fewer than any browser refuses. */
const MOST_PIXELS = 4096
/** Dots per inch, where the picture is small enough for that. */
const DOTS_PER_INCH = 200
/** How many pixels of an SVG make an inch. Source: CSS Values and Units, absolute lengths. */
const SVG_PIXELS_PER_INCH = 96

/** Rejects if the browser cannot decode or paint the picture. */
export async function svgToPng(svg: string): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }))
  try {
    const image = new Image()
    image.src = address
    await image.decode()
    const scale = Math.min(DOTS_PER_INCH / SVG_PIXELS_PER_INCH, MOST_PIXELS / Math.max(image.width, image.height))
    const canvas = document.createElement('canvas')
    canvas.width = Math.max(1, Math.round(image.width * scale))
    canvas.height = Math.max(1, Math.round(image.height * scale))
    const pen = canvas.getContext('2d')
    if (pen === null) throw new Error('no canvas')
    pen.fillStyle = '#ffffff'
    pen.fillRect(0, 0, canvas.width, canvas.height)
    pen.drawImage(image, 0, 0, canvas.width, canvas.height)
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'))
    if (blob === null) throw new Error('no picture')
    return blob
  } finally {
    URL.revokeObjectURL(address)
  }
}
