package page

import "errors"

// What is asked of the page and cannot be.
var (
	errNoSpot = errors.New("the job has no such cloth in this width and lay any more; load the page again")
	errFaulty = errors.New("the job cannot be laid as it stands; put right what is marked in it first")
)
