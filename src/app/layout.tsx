import '@fontsource-variable/inter/wght.css'
import './globals.css'
import type { Metadata, Viewport } from 'next'
import type { ReactNode } from 'react'

export const metadata: Metadata = {
  title: { default: 'Turnbook', template: '%s · Turnbook' },
  description: 'Who attacked, defended, kept goal and waited, and whether that was fair.',
}

export const viewport: Viewport = { width: 'device-width', initialScale: 1 }

// A page that is still arriving is put in place by a script; where there is none, this shows it as it comes.
const withoutScript = '[hidden][id^="S:"]{display:block!important}[data-loading]{display:none!important}'

export default function RootLayout({ children }: { readonly children: ReactNode }) {
  return (
    <html lang="en-GB">
      <body>
        <noscript>
          <style>{withoutScript}</style>
        </noscript>
        {children}
      </body>
    </html>
  )
}
