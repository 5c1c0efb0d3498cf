package amounts

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/page/browser"
)

// inView says that the top of what a selector gives is on the screen.
func inView(selector string) string {
	return `((box) => box.height > 0 && box.top > -2 && box.top < innerHeight)(document.querySelector('` + selector +
		`').getBoundingClientRect())`
}

// On a phone the form and the answer come into view, and the answer is gone to.
func TestAnswerIsSeen(t *testing.T) {
	v := browser.Visit(t, browser.Look{Wide: 375, High: 667})
	v.Do(browser.ClickOn(`document.querySelector('.gallery input')`))
	v.Until(inView(".numbers"))
	v.Do(browser.Written(browser.Labelled("Bust girth"), "92"), browser.Written(browser.Labelled("Waist girth"), "76"),
		browser.ClickOn(browser.Named("How much cloth?")))
	v.Until(`document.activeElement.matches('.answer') && document.querySelector('.answer .amount')`)
	v.Until(inView(".answer .amount"))
	answer := browser.Value[string](v, `document.querySelector('.answer').textContent`)
	assert.Regexp(t, `^Buy \d\.\d\d mRecommended: `, answer)
}

// The same statement in German.
func TestAnswerInGerman(t *testing.T) {
	v := browser.Visit(t, browser.Look{Wide: 1280, High: 800, Language: "de"})
	v.Do(browser.ClickOn(`document.querySelector('.gallery input')`),
		browser.Written(browser.Labelled("Brustumfang"), "92"), browser.Written(browser.Labelled("Taillenumfang"), "76"),
		browser.ClickOn(browser.Named("Wie viel Stoff")))
	v.Until(`/^\d,\d\d m kaufenEmpfohlen: /.test(document.querySelector('.answer').textContent)`)
}

// A cloth of 14 cm is refused in one sentence, which asks whether 140 was meant; so is 1.40.
// No file is named.
func TestNarrowClothInOneSentence(t *testing.T) {
	v := browser.Visit(t, browser.Usual)
	v.Do(browser.ClickOn(`document.querySelector('.gallery input')`),
		browser.Written(browser.Labelled("Bust girth"), "92"), browser.Written(browser.Labelled("Waist girth"), "76"))
	for width, want := range map[string]string{
		"14":   "A cloth of 14 cm is too narrow for: front bodice, back bodice, ",
		"1.40": "1.4 cm is too narrow to be the width of a cloth. Did you mean 140 cm?",
	} {
		v.Do(browser.Written(browser.Labelled("Width of the cloth"), width),
			browser.ClickOn(browser.Named("How much cloth?")))
		v.Until(`document.querySelector('.answer .fault')?.textContent.startsWith('` + want + `')`)
		said := browser.Value[string](v, `document.querySelector('.answer').textContent`)
		assert.Regexp(t, ` Did you mean 140 cm\?$`, said)
		assert.Equal(t, "true", browser.Value[string](v,
			browser.Labelled("Width of the cloth")+`.getAttribute('aria-invalid')`))
	}
}

// A size says by its girths what it is, in the units that were chosen.
func TestSizesSayTheirGirths(t *testing.T) {
	v := browser.Visit(t, browser.Usual)
	v.Do(browser.ClickOn(`document.querySelector('.gallery input')`),
		browser.ClickOn(`document.querySelector('input[value=size]')`))
	const option = `[...document.querySelectorAll('option')].find((one) => one.value === '12')?.textContent`
	v.Until(option + `?.startsWith('12: bust 92 cm, waist ')`)
	v.Do(browser.ClickOn(`document.querySelector('input[value=in]')`))
	v.Until(option + `?.startsWith('12: bust 36 1/4 in, waist ')`)
}

// What goes wrong with a form is said beside its button, and not on the next screen.
func TestFormSaysWhatIsWrongAtItsButton(t *testing.T) {
	v := browser.Visit(t, browser.Usual)
	v.Show("#/clients", browser.OnScreen+`'clients'`)
	v.Write("Name", "Wanda Leiris")
	v.Click("Note these measurements")
	v.Until(`document.querySelector('form .buttons + .outcome.fault')`)
	v.Until(inView(".outcome"))
	assert.Empty(t, browser.Value[string](v, `document.getElementById('notices').textContent`))
	v.Write("Waist girth", "81.5")
	v.Click("Note these measurements")
	v.Until(`document.querySelector('form .outcome:not(.fault)')?.textContent === 'Noted.'`)
}
