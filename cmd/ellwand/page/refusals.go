package page

import (
	"errors"

	"ellwand/cmd/ellwand/job"
	"ellwand/pieces/language"
)

// refusal is one of the page's own: a word by which the page has a sentence for it in the
// reader's language, and that sentence in English.
type refusal struct{ code, text string }

// Error is the sentence.
func (r refusal) Error() string { return r.text }

// What is asked of the page and cannot be.
var (
	errNoSpot  = refusal{"no spot", "the job has no such cloth in this width and lay any more; load the page again"}
	errNotLaid = refusal{"not laid", "nothing is laid here yet, or the job has changed; lay it first"}
	errNoGain  = refusal{"no gain",
		"in two parts this takes no less cloth, so that it is shown in one; choose that way " +
			"of laying to move its pieces"}
	errFaulty = refusal{"faulty", "the job cannot be laid as it stands; put right what is marked first"}
	// errHalfTyped keeps figures off paper that are older than what is written on the page.
	errHalfTyped = refusal{"half typed", "a field of the job holds what cannot stand in it, so that this would be " +
		"printed with its last good value; put right first what is marked"}
	errNoJob   = refusal{"no job", "there is no job of this name in the folder"}
	errPath    = refusal{"whole path", "write the whole path of the folder, from the top"}
	errGone    = refusal{"cut gone", "a piece that is cut already is none of the job's any more; load the page again"}
	errNotRead = refusal{"not read", "this request cannot be read; load the page again"}
	errBroken  = refusal{"not whole", "the file did not arrive whole; choose it again"}
	errEmpty   = refusal{"empty", "the file is empty: nothing is in it; choose another one"}
	errNoRoom  = refusal{"no room", "there is no room for the file in the folder for temporary files"}
	errNoWidth = refusal{"no width", "a width of the table is no width of a cloth; write each from edge to edge, " +
		"such as 140cm"}
	errStopped   = refusal{"stopped", "it was stopped before anything was laid"}
	errDistances = refusal{"distances", "two distances are needed: for each, two places in the picture and how " +
		"far apart they are"}
	// errUnknownScale asks for what is known in a photo.
	errUnknownScale = refusal{"no scale",
		"a photo needs something of a known size in it: say how wide the squares of " +
			"its ground are, which paper lies beside the pieces, or two distances that were measured"}
)

// withoutPlaces says what is wrong with a job that stands in no file.
func withoutPlaces(err error) error {
	var faults *job.Faults
	if !errors.As(err, &faults) {
		return err
	}
	var said []language.Sentence
	for _, fault := range faults.List {
		said = append(said, fault.Said)
	}
	return &language.Refusal{Sentence: language.Join("; ", said...)}
}
