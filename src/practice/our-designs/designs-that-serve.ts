import type { ThemeKey } from '#themes/our-themes'

/** Which of our designs serve which of our themes besides the one that each is about. Our own judgement. */
export const designsThatServe: readonly { readonly themeId: ThemeKey; readonly designId: string }[] = [
  { themeId: 'findingSpace', designId: 'lanes' },
  { themeId: 'findingSpace', designId: 'keepItWarm' },
  { themeId: 'extraPlayer', designId: 'bridge' },
  { themeId: 'extraPlayer', designId: 'lateLamp' },
  { themeId: 'finishing', designId: 'doorOrWindow' },
  { themeId: 'slowingDown', designId: 'quickFinish' },
  { themeId: 'slowingDown', designId: 'doorOrWindow' },
  { themeId: 'winningBack', designId: 'overTheLine' },
  { themeId: 'changingOver', designId: 'doors' },
  { themeId: 'changingOver', designId: 'closeTheNet' },
]
