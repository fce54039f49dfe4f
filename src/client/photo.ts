const LONGEST = 1600
const QUALITY = 0.82

/** Some phones draw one flat colour instead of failing; such a drawing is no photo. */
const isFlat = (canvas: HTMLCanvasElement): boolean => {
  const small = document.createElement('canvas')
  small.width = 8
  small.height = 8
  const pen = small.getContext('2d')
  if (!pen) return true
  pen.drawImage(canvas, 0, 0, 8, 8)
  const { data } = pen.getImageData(0, 0, 8, 8)
  return data.every((v, i) => v === data[i % 4])
}

/** The photo drawn anew, upright and small, without where and when; the original if that fails. */
export const reencode = async (file: File): Promise<Blob> => {
  try {
    const image = await createImageBitmap(file, { imageOrientation: 'from-image' })
    const scale = Math.min(1, LONGEST / Math.max(image.width, image.height))
    const canvas = document.createElement('canvas')
    canvas.width = Math.max(1, Math.round(image.width * scale))
    canvas.height = Math.max(1, Math.round(image.height * scale))
    const pen = canvas.getContext('2d')
    pen?.drawImage(image, 0, 0, canvas.width, canvas.height)
    image.close()
    const blob = await new Promise<Blob | null>((done) =>
      canvas.toBlob(done, 'image/jpeg', QUALITY),
    )
    return blob && blob.size > 0 && !isFlat(canvas) ? blob : file
  } catch {
    return file
  }
}
