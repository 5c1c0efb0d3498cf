package job

import (
	"slices"

	"ellwand/draft"
)

// Shortened resolves the job again with a part of a garment shorter by so
// much, mm. It fails where that cannot be drafted.
func (f *File) Shortened(s Shortening, by float64) (*Work, error) {
	return f.resolve(shortening{s, by})
}

// SmallerSizes of the job's table, the next first; none when the job is not
// drafted from a size of a table.
func (f *File) SmallerSizes() []string {
	if f.Size == "" {
		return nil
	}
	sizes := f.SizesInOrder()
	at := slices.Index(sizes, string(f.Size))
	if at <= 0 {
		return nil
	}
	smaller := slices.Clone(sizes[:at])
	slices.Reverse(smaller)
	return smaller
}

// SizesInOrder are those of the job's table, the smallest first; none when the job is
// not drafted from a table.
func (f *File) SizesInOrder() []string {
	switch {
	case f.isDrafted() && (f.Table == "" || f.hasPattern()):
		return nil
	case f.isDrafted():
		return draft.Sizes(string(f.Table))
	}
	return f.patternSizes()
}

// InSize resolves the job again in another size of its table, and of its patterns.
func (f *File) InSize(size string) (*Work, error) {
	other := *f
	other.Size = Text(size)
	other.Garments = slices.Clone(f.Garments)
	for i, garment := range other.Garments {
		if garment.Pattern != nil && garment.Pattern.Size != "" {
			sized := *garment.Pattern
			sized.Size = ""
			other.Garments[i].Pattern = &sized
		}
	}
	return other.Resolve()
}
