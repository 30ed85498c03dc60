/** A picture to scale as a PNG: the SVG painted on a canvas by the browser. */

/** Points on a side, at most: more than any printer shows, less than any browser refuses. */
const MOST = 4096
/** Dots an inch, where the picture is no larger than that. */
const DOTS = 200

export async function svgToPng(svg: string): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }))
  try {
    const image = new Image()
    image.src = address
    await image.decode()
    // Pixels of the picture are 96 an inch.
    const scale = Math.min(DOTS / 96, MOST / Math.max(image.width, image.height))
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
