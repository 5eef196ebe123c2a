import '@fontsource-variable/inter/wght.css'
import './globals.css'
import type { Metadata, Viewport } from 'next'
import type { ReactNode } from 'react'

export const metadata: Metadata = {
  title: { default: 'Turnbook', template: '%s · Turnbook' },
  description: 'Who attacked, defended, kept goal and waited, and whether that was fair.',
}

export const viewport: Viewport = { width: 'device-width', initialScale: 1 }

// Who asks, and whether there is a demo, is known when a page is asked for; none may be made at build time.
export const dynamic = 'force-dynamic'

export default function RootLayout({ children }: { readonly children: ReactNode }) {
  return (
    <html lang="en-GB">
      <body>{children}</body>
    </html>
  )
}
