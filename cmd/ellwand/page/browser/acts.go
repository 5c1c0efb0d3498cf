package browser

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// Show a screen, whole, once what says so is true.
func (v *Visitor) Show(hash, there string) {
	v.Helper()
	v.Do(chromedp.Evaluate[chromedp.Void](fmt.Sprintf(`location.hash = %q`, hash)))
	v.Until(there)
	v.Until(`[...document.images].every((image) => image.complete || image.loading === 'lazy')`)
}

// Named is the expression for a button or link by the beginning of its name, as it is
// read out.
func Named(name string) string {
	return fmt.Sprintf(`[...document.querySelectorAll('button, a, summary, label')].find(
		(one) => (one.getAttribute('aria-label') ?? one.textContent).trim().toLowerCase().startsWith(%q))`,
		strings.ToLower(name))
}

// Click what has a name, with the mouse; again where something that came in between moved
// it away from under the hand.
func (v *Visitor) Click(name string) {
	v.Helper()
	element := Named(name)
	for isStruck := false; !isStruck; {
		v.Until(uncovered(element))
		x, y := v.Middle(element)
		v.Do(chromedp.Evaluate[chromedp.Void](`window.struck = false;
			window.striking = (event) => { window.struck ||= event.composedPath().includes(`+element+`); };
			document.addEventListener('click', window.striking, true)`), chromedp.MouseClickXY(x, y))
		// A page that was left for another one knows nothing of it.
		isStruck = Value[bool](v, `window.striking && document.removeEventListener('click', window.striking, true),
			window.struck !== false`)
	}
}

// uncovered says that nothing lies over the middle of an element, scrolled into view.
func uncovered(element string) string {
	return `((one) => {
		one?.scrollIntoView({ block: 'center', inline: 'center', behavior: 'instant' });
		const box = one?.getBoundingClientRect();
		return box && one.contains(document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2));
	})(` + element + `)`
}

// Middle of an element, scrolled into view, once it stands still: what is found above it
// may still move it.
func (v *Visitor) Middle(element string) (x, y float64) {
	v.Helper()
	at := Await[[]float64](v, `new Promise((found) => {
		let last = '';
		const look = () => {
			const one = `+element+`;
			one?.scrollIntoView({ block: 'center', inline: 'center', behavior: 'instant' });
			const box = one?.getBoundingClientRect();
			const here = JSON.stringify(box);
			if (box && here === last) return found([box.left + box.width / 2, box.top + box.height / 2]);
			last = here;
			requestAnimationFrame(look);
		};
		look();
	})`)
	return at[0], at[1]
}

// File of the visitor's folder, as it is.
func (v *Visitor) File(name string) string {
	v.Helper()
	text, err := os.ReadFile(filepath.Join(v.Folder, name))
	require.NoError(v, err)
	return string(text)
}

// Labelled is the expression for the field whose label begins so.
func Labelled(label string) string {
	return fmt.Sprintf(`document.getElementById([...document.querySelectorAll('main label[for]')].find(
		(one) => one.textContent.trim().toLowerCase().startsWith(%q))?.htmlFor)`, strings.ToLower(label))
}

// Write into the field whose label begins so, in place of what stands there: with the
// mouse and the keyboard, and then leave the field. The mouse tries again where something
// that came in between moved the field away from under it.
func (v *Visitor) Write(label, text string) {
	v.Helper()
	element := Labelled(label)
	for isIn := false; !isIn; {
		v.Until(uncovered(element))
		x, y := v.Middle(element)
		v.Do(chromedp.MouseClickXY(x, y))
		isIn = Value[bool](v, `document.activeElement === `+element)
	}
	v.Do(chromedp.Evaluate[chromedp.Void](`document.activeElement.select?.()`), chromedp.KeyEvent(text+"\t"))
}

// Pick a value of the list whose label begins so.
func (v *Visitor) Pick(label, value string) {
	v.Helper()
	v.Until(Labelled(label))
	v.Do(chromedp.Evaluate[chromedp.Void](fmt.Sprintf(`((list) => {
		list.value = %q;
		list.dispatchEvent(new Event('change', { bubbles: true }));
	})(%s)`, value, Labelled(label))))
}

// Press keys, one after the other.
func (v *Visitor) Press(keys ...string) {
	v.Helper()
	for _, key := range keys {
		v.Do(chromedp.KeyEvent(key))
	}
}

// TabTo presses the tabulator until an expression of the focused element, called on, is
// true.
func (v *Visitor) TabTo(on string) {
	v.Helper()
	const enough = 400
	for range enough {
		if Value[bool](v, `((on) => Boolean(`+on+`))(document.activeElement)`) {
			return
		}
		v.Do(chromedp.KeyEvent("\t"))
	}
	require.Fail(v, "the tabulator does not come there", "%s; the page says:\n%s", on, v.Seen())
}

// Drag what an expression gives by so many pixels, with the mouse.
func (v *Visitor) Drag(element string, right, down float64) {
	v.Helper()
	x, y := v.Middle(element)
	v.Do(chromedp.DragAndDropXY(x, y, x+right, y+down))
}

// Saved waits until all that was typed has come to the program.
func (v *Visitor) Saved() {
	v.Helper()
	v.Until(`document.getElementById('saved').dataset.saved === 'true'`)
}

// Chosen is a value of a list that an expression gives, chosen there.
func Chosen(list, value string) chromedp.Action[chromedp.Void] {
	return chromedp.Evaluate[chromedp.Void](fmt.Sprintf(`(() => {
		const list = %s;
		list.value = %q;
		list.dispatchEvent(new Event('change', { bubbles: true }));
	})()`, list, value))
}

// Written is a text that is written into a field that an expression gives, and left.
func Written(field, text string) chromedp.Action[chromedp.Void] {
	return chromedp.Evaluate[chromedp.Void](fmt.Sprintf(`(() => {
		const field = %s;
		field.value = %q;
		field.dispatchEvent(new Event('input', { bubbles: true }));
		field.dispatchEvent(new Event('change', { bubbles: true }));
	})()`, field, text))
}
