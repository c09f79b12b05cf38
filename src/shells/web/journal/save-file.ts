/** Hands a text to the browser as a file to keep. */
export function saveFile(name: string, text: string, type = 'application/x-ndjson'): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name.replace(/[^\p{L}\p{N}._-]+/gu, '-');
  link.click();
  // The download has its own hold on the blob once it was started.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
