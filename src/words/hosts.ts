import { area } from "./language.ts";

/** The desktop window's own dialogs and menu. */
export const hostWords = area("hosts", {
  study: "Flocwright study",
  otherNotOpened: "The other study was not opened",
  unsavedHere: "Something typed in this window is not saved yet.",
  notOpened: "This study could not be opened",
  pageMayNot: "This page may not call Flocwright.",
  crashed: "The screens stopped several times within a minute.",
  savedIsThere: "Everything that had been saved is in the study file.",
  loadAgain: "Load them again",
  close: "Close",
  unsaved: "Something typed here is not saved yet.",
  unsavedLost:
    "The study file cannot be written at the moment. If you close now, what was not saved is lost.",
  stay: "Stay",
  closeUnsaved: "Close without saving it",
  menu: {
    view: "View",
    resetZoom: "Actual Size",
    zoomIn: "Zoom In",
    zoomOut: "Zoom Out",
    fullScreen: "Toggle Full Screen",
  },
});
