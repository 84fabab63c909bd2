import { Menu, type MenuItemConstructorOptions } from "electron";

/** The menu holds what the system expects and nothing that leads out: no links, no developer tools. */
export function setMenu(platform: NodeJS.Platform): void {
  const view: MenuItemConstructorOptions = {
    label: "View",
    submenu: [{ role: "resetZoom" }, { role: "zoomIn" }, { role: "zoomOut" }, { role: "togglefullscreen" }],
  };
  const parts: MenuItemConstructorOptions[] =
    platform === "darwin"
      ? [{ role: "appMenu" }, { role: "editMenu" }, view, { role: "windowMenu" }]
      : [view];
  Menu.setApplicationMenu(Menu.buildFromTemplate(parts));
}
