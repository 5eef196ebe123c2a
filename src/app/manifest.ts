import type { MetadataRoute } from 'next'

/** What a phone needs to put the pitch on its first screen. */
export default function manifest(): MetadataRoute.Manifest {
  return {
    id: '/pitch',
    name: 'Turnbook at the pitch',
    short_name: 'Turnbook',
    description: 'Who goes now: the practice on the phone, with or without a signal.',
    start_url: '/pitch',
    scope: '/',
    display: 'standalone',
    background_color: '#ffffff',
    theme_color: '#ffffff',
    icons: [
      { src: '/icons/icon-192.png', sizes: '192x192', type: 'image/png' },
      { src: '/icons/icon-512.png', sizes: '512x512', type: 'image/png' },
      { src: '/icons/icon-512-maskable.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
  }
}
