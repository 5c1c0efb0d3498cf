package main

import (
	"os/exec"
	"runtime"
)

// openBrowser opens an address as the system opens addresses.
func openBrowser(address string) error {
	command := exec.Command("xdg-open", address)
	switch runtime.GOOS {
	case "darwin":
		command = exec.Command("open", address)
	case "windows":
		command = exec.Command("rundll32", "url.dll,FileProtocolHandler", address)
	}
	if err := command.Start(); err != nil {
		return err
	}
	go func() { _ = command.Wait() }() // how it ends is the browser's own matter
	return nil
}
