import { useEffect } from 'react'
import { create } from 'zustand'

export interface MenuEntry {
  words: string
  act: () => void
}

interface PageMenu {
  /** In groups, as they stand in the menu. */
  groups: readonly (readonly MenuEntry[])[]
}

/** What the page that is open adds to the one menu of the head. */
export const usePageMenu = create<PageMenu>(() => ({ groups: [] }))

/** Puts a page's own entries into the menu for as long as the page stands; `groups` is held steady by the caller. */
export function useMenuOfPage(groups: readonly (readonly MenuEntry[])[]): void {
  useEffect(() => {
    usePageMenu.setState({ groups })
    return () => usePageMenu.setState({ groups: [] })
  }, [groups])
}
