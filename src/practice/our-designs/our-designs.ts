import type { OurDesign } from '#practice/our-designs/design-parts'
import { libraryDesigns } from '#practice/our-designs/library-designs'
import { seasonDesigns } from '#practice/our-designs/season-designs'

/** Every design that a club may begin with. */
export const ourDesigns: readonly OurDesign[] = [...seasonDesigns, ...libraryDesigns]
