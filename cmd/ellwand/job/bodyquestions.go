package job

import (
	"ellwand/cmd/ellwand/strict"
	"ellwand/draft"
	"ellwand/pieces/language"
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
	whose := draft.WhoseTable(string(table))
	for _, odd := range body.Odd(string(table)) {
		text, _ := textOf(given, odd.Name)
		beside, _ := textOf(given, odd.Beside)
		var guesses []language.Sentence
		if guess := q.meant(text, about(odd.Usual)); !guess.IsEmpty() {
			guesses = append(guesses, guess)
		}
		if guess := q.meant(beside, about(odd.UsualBeside)); odd.UsualBeside > 0 && !guess.IsEmpty() {
			guesses = append(guesses, language.Say("a %s of %s", "%s %s", odd.Beside, guess))
		}
		q.ask(path.Key("body").Key(bodyKey(odd.Name)), "a %s of %s hardly goes with a %s of %s (the %s table has about "+
			"%s): %s", "%s %s passt kaum zu %s %s (%s hat etwa %s): %s",
			odd.Name, q.work.Format(odd.Value), odd.Beside, q.work.Format(body[odd.Beside]), whose, q.work.Format(odd.Usual),
			orMeant(either(guesses)))
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
