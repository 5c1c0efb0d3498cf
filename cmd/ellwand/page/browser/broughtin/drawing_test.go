package broughtin

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/page/browser"
)

// chooseDrawing of one piece, as if it was taken from a folder.
const chooseDrawing = `(() => {
  const drawing = '<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 400 300">' +
    '<path d="M10 10 H210 V160 H10 Z"/></svg>';
  const taken = new DataTransfer();
  taken.items.add(new File([drawing], 'pouch.svg'));
  const input = document.querySelector('input[type=file]');
  input.files = taken.files;
  input.dispatchEvent(new Event('change'));
  return true;
})()`

// A drawing is shown with its numbers, and what it does not say is asked beside it.
func TestDrawingIsCompleted(t *testing.T) {
	v := browser.Visit(t, browser.Usual, "skirt.yaml")
	v.Show("#/pattern", browser.OnScreen+`'pattern'`)
	assert.True(t, browser.Value[bool](v, chooseDrawing))
	v.Until(`document.querySelector('.numbered')?.naturalWidth > 0`)
	v.Write("1: what it is called", "pouch side")
	v.Write("1: how many are cut", "2")
	v.Write("name of the job", "Pouch")
	v.Click("Lay it")
	v.Until(browser.OnScreen + `'lay'`)
	text := v.File("pouch-pieces.yaml")
	assert.Contains(t, text, "pouch side")
	assert.Contains(t, text, "cut: 2")
}
