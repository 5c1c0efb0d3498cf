package draft

import "errors"

// Draft drafts the pieces of one garment. The error is a sentence that names
// the measurement or option which cannot be.
func Draft(request Request) (Result, error) {
	if err := request.Body.Check(); err != nil {
		return Result{}, err
	}
	return Result{}, errors.New("the garment asks for no pieces: ask for a bodice or for parts")
}
