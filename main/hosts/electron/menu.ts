import { Menu, type MenuItemConstructorOptions } from "electron";
import { hostWords } from "../../../src/words/hosts.ts";

/**
 * The menu holds what the system expects and nothing that leads out: no links, no developer tools. Set anew when another
 * language is spoken.
 */
export function setMenu(platform: NodeJS.Platform): void {
  const { menu } = hostWords;
  const view: MenuItemConstructorOptions = {
    label: menu.view,
    submenu: [
      { role: "resetZoom", label: menu.resetZoom },
      { role: "zoomIn", label: menu.zoomIn },
      { role: "zoomOut", label: menu.zoomOut },
      { role: "togglefullscreen", label: menu.fullScreen },
    ],
  };
  const parts: MenuItemConstructorOptions[] =
    platform === "darwin"
      ? [{ role: "appMenu" }, { role: "editMenu" }, view, { role: "windowMenu" }]
      : [view];
  Menu.setApplicationMenu(Menu.buildFromTemplate(parts));
}
