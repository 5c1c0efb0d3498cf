package job

// questions about a job, each with its line and the likely cause.
func (f *File) questions(work *Work) []Question {
	q := &questioner{file: f, work: work}
	q.bodies()
	q.lengths()
	q.cloths()
	q.allowances()
	q.parts()
	return q.out
}

// Resolve parses the measurements, drafts the garments and makes the cloths.
// The error is *Faults: everything found wrong, with its line; or *Ended, see Within.
func (f *File) Resolve() (*Work, error) {
	work, err := f.resolve(shortening{})
	if err == nil {
		work.Questions = f.questions(work)
	}
	return work, err
}
