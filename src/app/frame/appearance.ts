import type { Settings } from '@/notebook/settings-record.ts'

export type AppearanceSetting = Settings['appearance']

/** Puts the chosen appearance in force; `system` leaves it to the device. */
export function showAppearance(setting: AppearanceSetting): void {
  if (setting === 'system') delete document.documentElement.dataset.appearance
  else document.documentElement.dataset.appearance = setting
}
