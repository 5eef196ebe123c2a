/** Share − fair share: negative is short, positive is over. */
export function gapSeconds(figure: { readonly seconds: number; readonly fairSeconds: number }): number {
  return figure.seconds - figure.fairSeconds
}
