package main

import (
	"fmt"
	"time"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/screen"
	"ellwand/cmd/ellwand/words"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/nest"
	"ellwand/pieces/language"
)

// watch shows on a terminal how the work on a job goes; done clears the line.
func (e *env) watch(work *job.Work) (watch app.Watch, done func()) {
	bar := screen.NewProgress(e.err, e.quiet)
	return app.Watch{
		Found: func(c cloth.Cloth, kind lay.Kind, p nest.Progress) {
			title := fmt.Sprintf("%s %s, %s", c.Name, work.Format(c.Width), kind)
			bar.Show(title, work.FormatLong(p.Length), work.FormatAtLeast(p.Bound), p.Elapsed)
		},
		Counted: func(over, all int, elapsed time.Duration) { bar.Count("laying", over, all, elapsed) },
		Trying:  bar.Trying,
	}, bar.Done
}

// warn passes on what may be slips in the job, and what the draft has to say.
func (e *env) warn(work *job.Work) {
	for _, question := range work.Questions {
		e.note("warning: %s", question)
	}
	e.notes(language.Texts(work.Notes, language.English))
}

// warnPaper says as well what stands otherwise on paper.
func (e *env) warnPaper(work *job.Work, onPaper bool) {
	e.warn(work)
	if onPaper {
		e.notes(words.Letters(work))
	}
}

// notes tells the user sentences beside the result.
func (e *env) notes(sentences []string) {
	for _, sentence := range sentences {
		e.note("note: %s", sentence)
	}
}

// noteEnded says when searches were ended before their time.
func (e *env) noteEnded(ended plan.Ended) {
	if ended.Early {
		e.note("note: %s", ended.Say())
	}
}
