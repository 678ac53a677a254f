package io.ovenmark.cli;
/** Entry. */
public final class Main { private Main() {} 
/** Runs. @param args arguments */
public static void main(String[] args) { System.out.println("ovenmark"); } }
