package illustration

import (
	"io"
	"slices"
)

// Option writes the picture of a choice of an option of the job file: option is its
// block and key, such as skirt.shape, and choice its word. The error is ErrUnknown for
// one that has no picture, or that of w.
func Option(w io.Writer, option, choice string) error {
	of, ok := optionSketches[option]
	if !ok {
		return ErrUnknown
	}
	s, ok := of[choice]
	if !ok {
		return ErrUnknown
	}
	v := newView(s.frame(), garmentHigh)
	v.stand()
	s.draw(v)
	return v.write(w, choice)
}

// Options are the options that have pictures.
func Options() []string {
	return slices.Sorted(func(yield func(string) bool) {
		for name := range optionSketches {
			if !yield(name) {
				return
			}
		}
	})
}
