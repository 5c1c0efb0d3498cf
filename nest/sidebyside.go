package nest

import (
	"fmt"
	"runtime/debug"
	"sync"
)

// sideBySide does so many jobs, as many at a time as there are workers. A panic in one
// of them is raised again here, where the caller of Solve can recover from it, with the
// stack of where it arose.
func (r *run) sideBySide(jobs int, do func(k int)) {
	slots := make(chan struct{}, r.o.Workers)
	fell := make([]any, jobs)
	var group sync.WaitGroup
	for k := range jobs {
		slots <- struct{}{}
		group.Go(func() {
			defer func() {
				if value := recover(); value != nil {
					fell[k] = fmt.Sprintf("%v\n\n%s", value, debug.Stack())
				}
				<-slots
			}()
			do(k)
		})
	}
	group.Wait()
	for _, value := range fell {
		if value != nil {
			panic(value)
		}
	}
}
