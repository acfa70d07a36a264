import { VitePWA } from 'vite-plugin-pwa'

/**
 * Has the browser keep the whole program, so that every place opens without a network after the first visit. A newer version
 * is fetched beside the old one and waits until it is taken; the old files stay until then. An address that is not part of
 * the program is asked of the server as ever, so that an unknown one stays unknown.
 */
export const keptProgram = VitePWA({
  registerType: 'prompt',
  injectRegister: false,
  manifest: {
    name: 'Evenhand',
    short_name: 'Evenhand',
    description: 'A notebook for fair side-by-side dough trials',
    lang: 'en',
    id: './',
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: '#fafaf8',
    theme_color: '#fafaf8',
    categories: ['food', 'education', 'productivity'],
    icons: [
      { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
      { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
      { src: 'icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
    screenshots: [
      {
        src: 'screenshot-wide.png',
        sizes: '1280x800',
        type: 'image/png',
        form_factor: 'wide',
        label: 'What a trial of three sessions found',
      },
      {
        src: 'screenshot-phone.png',
        sizes: '390x844',
        type: 'image/png',
        form_factor: 'narrow',
        label: 'The same on a phone',
      },
    ],
  },
  workbox: {
    globPatterns: ['**/*.{js,css,html,svg,png,woff2,json,txt}'],
    globIgnores: ['screenshot-*.png'],
    navigateFallback: null,
    clientsClaim: true,
    cleanupOutdatedCaches: true,
  },
})
