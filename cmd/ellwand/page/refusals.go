package page

import (
	"errors"
	"strings"

	"ellwand/cmd/ellwand/job"
)

// What is asked of the page and cannot be.
var (
	errNoSpot  = errors.New("the job has no such cloth in this width and lay any more; load the page again")
	errNotLaid = errors.New("nothing is laid here yet, or the job has changed; lay it first")
	errFaulty  = errors.New("the job cannot be laid as it stands; put right what is marked in it first")
)

// withoutPlaces says what is wrong with a job that stands in no file.
func withoutPlaces(err error) error {
	var faults *job.Faults
	if !errors.As(err, &faults) {
		return err
	}
	var texts []string
	for _, fault := range faults.List {
		texts = append(texts, fault.Text)
	}
	return errors.New(strings.Join(texts, "; "))
}
