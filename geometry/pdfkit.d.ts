/** The PDF library, as far as the pages use it. */
declare module 'pdfkit' {
  const Pdf: import('./printing/pdfLibrary.ts').NewPdf
  export default Pdf
}
