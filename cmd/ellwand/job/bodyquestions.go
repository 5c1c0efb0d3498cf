package job

import (
	"fmt"
	"strings"

	"ellwand/cmd/ellwand/strict"
	"ellwand/draft"
)

// bodies asks about measurements that hardly go with each other.
func (q *questioner) bodies() {
	if len(q.file.Wearers) == 0 {
		q.body(Path{}, q.file.Table, q.file.Body)
	}
	for i, w := range q.file.Wearers {
		q.body(strict.Top("wearers").Entry(i), w.Table, w.Body)
	}
}

// body at a path, as far as the job gives it itself.
func (q *questioner) body(path Path, table Text, given Body) {
	body := draft.Body{}
	for _, name := range draft.Measurements() {
		if text, ok := textOf(given, name); ok {
			body[name] = q.length(text)
		}
	}
	whose := "women's"
	if table == "men" || table == "children" {
		whose = string(table) + "'s"
	}
	for _, odd := range body.Odd(string(table)) {
		text, _ := textOf(given, odd.Name)
		beside, _ := textOf(given, odd.Beside)
		var guesses []string
		if guess := q.meant(text, about(odd.Usual)); guess != "" {
			guesses = append(guesses, guess)
		}
		if guess := q.meant(beside, about(odd.UsualBeside)); odd.UsualBeside > 0 && guess != "" {
			guesses = append(guesses, fmt.Sprintf("a %s of %s", odd.Beside, guess))
		}
		q.ask(path.Key("body").Key(bodyKey(odd.Name)), "a %s of %s hardly goes with a %s of %s (the %s table has about "+
			"%s): %s",
			odd.Name, q.work.Format(odd.Value), odd.Beside, q.work.Format(body[odd.Beside]), whose, q.work.Format(odd.Usual),
			orMeant(strings.Join(guesses, ", or ")))
	}
}

// textOf a measurement in the file.
func textOf(given Body, name draft.Measurement) (Measure, bool) {
	for key, text := range given {
		if known, found := strict.KnownAs(key, []string{bodyKey(name)}); found && known == bodyKey(name) {
			return text, true
		}
	}
	return "", false
}
