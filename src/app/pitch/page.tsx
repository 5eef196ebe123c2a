import type { Metadata, Viewport } from 'next'
import { PitchApp } from '#app/pitch/pitch-app'

export const metadata: Metadata = { title: 'At the pitch', appleWebApp: { capable: true, title: 'Turnbook' } }

export const viewport: Viewport = {
  width: 'device-width',
  initialScale: 1,
  viewportFit: 'cover',
  themeColor: '#ffffff',
}

/** Holds nothing about anybody, so that a phone may keep it: which practice, and who is in it, is found out there. */
export default function PitchPage() {
  return <PitchApp />
}
