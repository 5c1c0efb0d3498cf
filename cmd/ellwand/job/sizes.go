package job

import "ellwand/cmd/ellwand/strict"

// OfSizes is the job as it can be resolved in any size (see InSize): of the
// women's table when it names none. It refuses a job that is drafted to
// measurements, since those belong to one body, and to no size.
func (f *File) OfSizes() (*File, error) {
	key := "body"
	if len(f.Wearers) > 0 {
		key = "wearers"
	}
	if len(f.Wearers) > 0 || len(f.Body) > 0 {
		return nil, f.Refuse(strict.Top(key), strict.Contradiction,
			"the job is drafted to the measurements of a body, which is of no size; "+
				"take out body or wearers, and add size: and table: to ask for several sizes",
			"der Auftrag ist nach Maßen gezeichnet, die keiner Größe gehören; nehmen Sie die Maße "+
				"heraus und geben Sie Größe und Größentabelle an, um nach mehreren Größen zu fragen")
	}
	out := *f
	if out.Table == "" && f.isDrafted() {
		out.Table = "women"
	}
	return &out, nil
}

// Sizes that the job can be resolved in, the smallest first; none where it is drafted to
// measurements, or from no table.
func (w *Work) Sizes() []string {
	sized, err := w.file.OfSizes()
	if err != nil {
		return nil
	}
	return sized.SizesInOrder()
}
